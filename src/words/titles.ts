const GIVEN = /^(experiment|lesson)?( \d+)?( \(copy( \d+)?\))*$/i;

/** Whether this is a title that the bench gives by itself, or none: it names nobody. */
export function isGivenTitle(title: string): boolean {
  return GIVEN.test(title);
}
