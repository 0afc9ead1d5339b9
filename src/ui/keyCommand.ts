export type KeyCommand =
  'listen' | 'mark' | 'lengths' | 'strike' | 'fork' | 'shorter' | 'longer' | 'undo' | 'redo' | 'keys';

const LETTERS: Readonly<Record<string, KeyCommand>> = {
  l: 'listen',
  m: 'mark',
  e: 'lengths',
  s: 'strike',
  f: 'fork',
  '?': 'keys',
};

/** Held down they go on, as a hand does that pushes the piston. */
const ARROWS: Readonly<Record<string, KeyCommand>> = { arrowleft: 'shorter', arrowright: 'longer' };

/**
 * What a key asks for; null where it belongs to the element that has the keyboard.
 * @param target  the innermost element of the event's path
 */
export function keyCommand(
  event: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey' | 'shiftKey' | 'repeat'>,
  target: EventTarget | undefined,
): KeyCommand | null {
  if (isTyping(target) || event.altKey) return null;
  const key = event.key.toLowerCase();
  if (event.ctrlKey || event.metaKey) {
    if (key === 'z') return event.shiftKey ? 'redo' : 'undo';
    return key === 'y' ? 'redo' : null;
  }
  const arrow = ARROWS[key];
  // A slider, a row of choices and a list that slides have arrows of their own.
  if (arrow !== undefined) return event.shiftKey || hasArrows(target) ? null : arrow;
  return event.repeat ? null : (LETTERS[key] ?? null);
}

function hasArrows(target: EventTarget | undefined): boolean {
  return (
    target instanceof HTMLInputElement ||
    (target instanceof HTMLElement && target.tabIndex === 0 && target.scrollWidth > target.clientWidth)
  );
}

function isTyping(target: EventTarget | undefined): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target instanceof HTMLInputElement)
    return !['range', 'radio', 'checkbox', 'button'].includes(target.type);
  return target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement;
}
