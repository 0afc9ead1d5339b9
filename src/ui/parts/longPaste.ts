import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { words } from '../../words/inUse.ts';

/**
 * Says so where a text that is pasted would be cut at its field's end, and pastes nothing: the browser would drop the
 * rest without a word.
 */
export class LongPaste implements ReactiveController {
  /** @param tell  takes whole sentences */
  constructor(
    host: ReactiveControllerHost,
    private readonly tell: (message: string) => void,
  ) {
    host.addController(this);
  }

  hostConnected(): void {
    addEventListener('paste', this.onPaste);
  }

  hostDisconnected(): void {
    removeEventListener('paste', this.onPaste);
  }

  private readonly onPaste = (event: ClipboardEvent): void => {
    const field = event.composedPath().at(0);
    if (!(field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement)) return;
    const fault = pasteFault(field, event.clipboardData?.getData('text/plain') ?? '');
    if (fault === null) return;
    event.preventDefault();
    this.tell(fault);
  };
}

/** What a field is asked for before something is pasted into it. */
export type PastedInto = Pick<HTMLInputElement, 'maxLength' | 'value' | 'selectionStart' | 'selectionEnd'>;

/** Why a text doesn't fit into a field; null where it does, or where the field takes any length. */
export function pasteFault(field: PastedInto, pasted: string): string | null {
  const { maxLength, value, selectionStart, selectionEnd } = field;
  if (maxLength < 0) return null;
  const replaced = (selectionEnd ?? 0) - (selectionStart ?? 0);
  // A field keeps every line end as one character.
  const length = value.length - replaced + pasted.replaceAll('\r\n', '\n').length;
  return length <= maxLength ? null : words.field.tooLong(length, maxLength);
}
