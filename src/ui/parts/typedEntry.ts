import { html, nothing } from 'lit';
import type { Session } from '../../session/session.ts';
import { words } from '../../words/inUse.ts';
import type { PartElement } from './partElement.ts';

/** Where a field keeps what is typed into it and not taken yet. */
export interface FieldDraft {
  /** Another one for another field or experiment. */
  readonly key: string;
  get(): string | null;
  set(text: string | null): void;
}

/** The draft of a field of the open experiment. @param field  one name a field, over all visits */
export function fieldDraft(session: Session, field: string): FieldDraft {
  const { id } = session.experiment;
  return {
    key: `${id} ${field}`,
    get: () => session.drafts.get(id, field),
    set: (text) => session.drafts.set(id, field, text),
  };
}

/** For a property that holds a draft. */
export function isOtherDraft(
  one: FieldDraft | null | undefined,
  other: FieldDraft | null | undefined,
): boolean {
  return one?.key !== other?.key;
}

/**
 * What stands in a field whose value is taken only as a whole: half a length is another length. It stays until it is
 * taken or forgotten, over a reload, too; then it says that it still waits.
 */
export class TypedEntry {
  /** Null where the field shows its value. */
  typed: string | null = null;
  private isBroughtBack = false;
  private key: string | null = null;

  constructor(private readonly host: PartElement & { draft: FieldDraft | null }) {}

  /** Brings back what waits for this field. Call it before the field is drawn. @returns whether it is another field now */
  follow(): boolean {
    const { draft } = this.host;
    if ((draft?.key ?? null) === this.key) return false;
    this.key = draft?.key ?? null;
    this.typed = draft?.get() ?? null;
    this.isBroughtBack = this.typed !== null;
    return true;
  }

  type(text: string): void {
    this.typed = text;
    this.isBroughtBack = false;
    this.host.draft?.set(text);
    this.host.requestUpdate();
  }

  /** It was taken, or is not wanted. */
  done(): void {
    this.typed = null;
    this.isBroughtBack = false;
    this.host.draft?.set(null);
    this.host.requestUpdate();
  }

  /** Says that something waits that was typed before. */
  hint() {
    if (!this.isBroughtBack) return nothing;
    return html`<p class="small">
      ${words.field.stillWaits}
      <button class="quiet" @click=${() => this.done()}>${words.field.forget}</button>
    </p>`;
  }
}
