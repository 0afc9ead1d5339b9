// @vitest-environment happy-dom
import { html } from 'lit';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { DraftPlace } from '../../../src/notebook/drafts.ts';
import type { Session } from '../../../src/session/session.ts';
import { SessionWatch } from '../../../src/ui/sessionWatch.ts';
import { PartElement } from '../../../src/ui/parts/partElement.ts';
import { LengthField } from '../../../src/ui/parts/lengthField.ts';
import { NumberField } from '../../../src/ui/parts/numberField.ts';
import { fieldDraft } from '../../../src/ui/parts/typedEntry.ts';
import { TypedTexts } from '../../../src/ui/parts/typedTexts.ts';
import type { TypedText } from '../../../src/ui/parts/typedTexts.ts';
import { QUANTITIES } from '../../../src/ui/readQuantity.ts';
import { MemoryStore } from '../notebook/memoryStore.ts';
import { benchInTest } from '../session/benchInTest.ts';

const NOTE: TypedText = {
  field: 'note',
  step: 'write note',
  read: ({ note }) => note,
  write: (experiment, note) => ({ ...experiment, note }),
};

class NotePart extends PartElement {
  session!: Session;
  readonly texts: TypedTexts = new TypedTexts(this, () => [NOTE]);
  protected readonly watch = new SessionWatch(this, ['notebook']);

  override render() {
    return html`<textarea
      .value=${this.session.experiment.note}
      @input=${(event: Event) => this.texts.onInput(event, NOTE)}
      @change=${(event: Event) => this.texts.onLeave(event, NOTE)}
    ></textarea>`;
  }
}
customElements.define('note-part', NotePart);

/** A browser's storage that outlives the page. */
function keptPlace(): DraftPlace {
  let kept: string | null = null;
  return { get: () => kept, set: (text) => (kept = text) };
}

async function onPage<T extends PartElement>(part: T): Promise<T> {
  document.body.append(part);
  await part.updateComplete;
  return part;
}

function fieldOf(part: PartElement): HTMLInputElement {
  const field = part.renderRoot.querySelector<HTMLInputElement>('input, textarea');
  if (field === null) throw new Error('no field');
  return field;
}

/** Keys without leaving the field. */
async function type(part: PartElement, text: string): Promise<void> {
  fieldOf(part).value = text;
  fieldOf(part).dispatchEvent(new Event('input'));
  await part.updateComplete;
}

beforeEach(() => {
  vi.useFakeTimers();
});

afterEach(() => {
  document.body.replaceChildren();
  vi.useRealTimers();
});

describe('a text that is typed', () => {
  async function notePart(session: Session): Promise<NotePart> {
    return onPage(Object.assign(new NotePart(), { session }));
  }

  it('is taken after a short pause without leaving the field; one stay in it is one step', async () => {
    const bench = benchInTest();
    const part = await notePart(bench);
    for (const text of ['W', 'Wa', 'Water']) await type(part, text);
    expect(bench.experiment.note).toBe('');
    vi.advanceTimersByTime(400);
    expect(bench.experiment.note).toBe('Water');
    await part.updateComplete;
    await type(part, 'Water was warm');
    vi.advanceTimersByTime(400);
    expect(bench.experiment.note).toBe('Water was warm');
    fieldOf(part).dispatchEvent(new Event('change'));
    await part.updateComplete;
    await type(part, 'Water was warm, then cold');
    vi.advanceTimersByTime(400);
    bench.undo();
    expect(bench.experiment.note).toBe('Water was warm');
    bench.undo();
    expect(bench.experiment.note).toBe('');
    expect(bench.undoName).toBeNull();
    await part.updateComplete;
    expect(fieldOf(part).value).toBe('');
    bench.redo();
    expect(bench.experiment.note).toBe('Water was warm');
  });

  it('that differs in nothing never joins another step', async () => {
    const bench = benchInTest();
    const part = await notePart(bench);
    bench.addMarkByHand(0.2);
    await type(part, '');
    vi.advanceTimersByTime(400);
    await type(part, 'x');
    vi.advanceTimersByTime(400);
    bench.undo();
    expect(bench.experiment.marks).toHaveLength(1);
    expect(bench.experiment.note).toBe('');
  });

  for (const [way, leave] of [
    ['the view changes', (part: NotePart) => part.remove()],
    ['the page is hidden', () => document.dispatchEvent(new Event('visibilitychange'))],
    ['the page goes', () => dispatchEvent(new Event('pagehide'))],
  ] as const) {
    it(`is taken at once when ${way}`, async () => {
      const bench = benchInTest();
      const part = await notePart(bench);
      await type(part, 'Water');
      leave(part);
      expect(bench.experiment.note).toBe('Water');
    });
  }

  it('whose page is ended in the middle comes back with its field, as a step', async () => {
    const draftPlace = keptPlace();
    const store = new MemoryStore();
    const outside = { draftPlace, openStore: () => Promise.resolve(store) };
    const bench = benchInTest(outside);
    await bench.restore();
    bench.addMarkByHand(0.2);
    await bench.keeping.idle();
    await type(await notePart(bench), 'Water was w');
    // Nothing more: the process is gone.
    const later = benchInTest(outside);
    await later.restore();
    expect(later.experiment.note).toBe('');
    await notePart(later);
    await vi.advanceTimersByTimeAsync(0);
    expect(later.experiment.note).toBe('Water was w');
    expect(later.undoName).toBe('write note');
    await later.keeping.idle();
    await vi.advanceTimersByTimeAsync(0);
    expect(later.drafts.get(later.experiment.id, 'note')).toBeNull();
  });

  it('stays among the drafts as long as it couldn’t be saved', async () => {
    const bench = benchInTest({ draftPlace: keptPlace() });
    await bench.restore();
    const part = await notePart(bench);
    await type(part, 'Water');
    vi.advanceTimersByTime(400);
    await vi.advanceTimersByTimeAsync(0);
    expect(bench.saveState.kind).toBe('refused');
    expect(bench.drafts.get(bench.experiment.id, 'note')).toBe('Water');
  });
});

describe('a length that is typed', () => {
  async function lengthField(session: Session, isFleeting: boolean) {
    const taken: unknown[] = [];
    const field = new LengthField();
    field.fleeting = isFleeting;
    field.draft = fieldDraft(session, 'new length');
    field.addEventListener('length-change', ({ detail }) => taken.push(detail));
    return { field: await onPage(field), taken };
  }
  const enter = (field: LengthField): boolean =>
    fieldOf(field).dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter' }));

  for (const isFleeting of [true, false]) {
    it(`comes back half typed and waits for Enter, ${isFleeting ? 'a new mark’s' : 'a mark’s'}`, async () => {
      const bench = benchInTest({ draftPlace: keptPlace() });
      const { field, taken } = await lengthField(bench, isFleeting);
      await type(field, '15.');
      field.remove();
      const again = await lengthField(bench, isFleeting);
      expect(fieldOf(again.field).value).toBe('15.');
      expect(again.field.renderRoot.textContent).toContain('it isn’t used yet. Press Enter');
      expect([...taken, ...again.taken]).toEqual([]);
      await type(again.field, '15.8');
      enter(again.field);
      expect(again.taken).toEqual([{ lengthM: 0.158, otherLengthM: null }]);
      expect(bench.drafts.get(bench.experiment.id, 'new length')).toBeNull();
      await again.field.updateComplete;
      expect(again.field.renderRoot.textContent).not.toContain('isn’t used yet');
    });
  }

  it('is forgotten on request', async () => {
    const bench = benchInTest({ draftPlace: keptPlace() });
    const { field } = await lengthField(bench, true);
    await type(field, '15.');
    field.remove();
    const again = await lengthField(bench, true);
    again.field.renderRoot.querySelector<HTMLButtonElement>('button.quiet')?.click();
    await again.field.updateComplete;
    expect(fieldOf(again.field).value).toBe('');
    expect(bench.drafts.get(bench.experiment.id, 'new length')).toBeNull();
  });

  it('stays as it was typed once it is taken, while it says the same', async () => {
    const bench = benchInTest({ draftPlace: keptPlace() });
    const field = new LengthField();
    field.typedAs = fieldDraft(bench, 'typed a');
    field.addEventListener('length-change', ({ detail }) => (field.lengthM = detail?.lengthM ?? null));
    await onPage(field);
    await type(field, '17,0');
    enter(field);
    await field.updateComplete;
    expect(fieldOf(field).value).toBe('17,0');
    const elsewhere = new LengthField();
    elsewhere.typedAs = fieldDraft(bench, 'typed a');
    elsewhere.lengthM = 0.17;
    await onPage(elsewhere);
    expect(fieldOf(elsewhere).value).toBe('17,0');
    elsewhere.lengthM = 0.18;
    await elsewhere.updateComplete;
    expect(fieldOf(elsewhere).value).toBe('18.0');
  });

  it('that is doubtful is asked about at its field: the same once more, or its button, is a yes', async () => {
    const bench = benchInTest();
    for (const answer of [
      enter,
      (field: LengthField) =>
        field.renderRoot.querySelector('button:not(.pad-key)')?.dispatchEvent(new Event('click')),
    ]) {
      const { field, taken } = await lengthField(bench, false);
      field.question = (readingM) => (readingM > 1 ? 'longer than the tube' : null);
      await type(field, '200');
      enter(field);
      await field.updateComplete;
      expect(taken).toEqual([]);
      expect(field.renderRoot.querySelector('[role=alert]:not([hidden])')?.textContent).toContain(
        'longer than the tube',
      );
      answer(field);
      expect(taken).toEqual([{ lengthM: 2, otherLengthM: null }]);
      field.remove();
    }
  });

  it('that is empty goes on to the next with Enter', async () => {
    const { field, taken } = await lengthField(benchInTest(), false);
    let done = 0;
    field.addEventListener('length-done', () => (done += 1));
    enter(field);
    expect([taken, done]).toEqual([[], 1]);
  });

  it('belongs to its experiment', async () => {
    const bench = benchInTest({ draftPlace: keptPlace() });
    const { field } = await lengthField(bench, true);
    await type(field, '15.');
    const { id } = bench.experiment;
    await bench.experiments.openNew(true);
    field.draft = fieldDraft(bench, 'new length');
    await field.updateComplete;
    expect(fieldOf(field).value).toBe('');
    expect(bench.drafts.get(id, 'new length')).toBe('15.');
  });
});

describe('a number that is typed', () => {
  it('comes back with its fault or half typed, and is taken with Enter', async () => {
    const bench = benchInTest({ draftPlace: keptPlace() });
    const made = async () => {
      const field = new NumberField();
      field.kind = QUANTITIES.diameterMm;
      field.optional = true;
      field.draft = fieldDraft(bench, 'diameter');
      const taken: unknown[] = [];
      field.addEventListener('quantity-change', ({ detail }) => taken.push(detail));
      return { field: await onPage(field), taken };
    };
    const first = await made();
    await type(first.field, '3');
    first.field.remove();
    const { field, taken } = await made();
    expect(fieldOf(field).value).toBe('3');
    expect(taken).toEqual([]);
    await type(field, '35');
    fieldOf(field).dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter' }));
    expect(taken).toEqual([35]);
    expect(bench.drafts.get(bench.experiment.id, 'diameter')).toBeNull();
  });
});
