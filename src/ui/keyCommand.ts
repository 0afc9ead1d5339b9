export type KeyCommand =
  | 'listen'
  | 'mark'
  | 'keep'
  | 'lengths'
  | 'strike'
  | 'fork'
  | 'shorter'
  | 'longer'
  | 'shorter-fine'
  | 'longer-fine'
  | 'undo'
  | 'redo'
  | 'keys';

const LETTERS: Readonly<Record<string, KeyCommand>> = {
  l: 'listen',
  m: 'mark',
  k: 'keep',
  e: 'lengths',
  s: 'strike',
  f: 'fork',
  '?': 'keys',
};

/** Held down they go on, as a hand does that pushes the piston; with Shift they go in finer steps. */
const ARROWS: Readonly<Record<string, readonly [KeyCommand, KeyCommand]>> = {
  arrowleft: ['shorter', 'shorter-fine'],
  arrowright: ['longer', 'longer-fine'],
};

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
  const arrow = ARROWS[key]?.[event.shiftKey ? 1 : 0];
  // A slider, a row of choices and a list that slides have arrows of their own; the column's slider has the column's.
  if (arrow !== undefined) return hasArrows(target) ? null : arrow;
  return event.repeat ? null : (LETTERS[key] ?? null);
}

function hasArrows(target: EventTarget | undefined): boolean {
  return (
    (target instanceof HTMLInputElement && !target.hasAttribute('data-column')) ||
    (target instanceof HTMLElement && target.tabIndex === 0 && target.scrollWidth > target.clientWidth)
  );
}

function isTyping(target: EventTarget | undefined): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target instanceof HTMLInputElement)
    return !['range', 'radio', 'checkbox', 'button'].includes(target.type);
  return target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement;
}
