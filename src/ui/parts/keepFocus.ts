/** For a button that types into a field: the keys on the screen stay, and the field isn't left. */
export function keepFocus(event: Event): void {
  event.preventDefault();
}
