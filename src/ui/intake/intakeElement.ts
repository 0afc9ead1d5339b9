import { css, html, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { LARGEST_TOTAL_BYTES, MOST_FILES } from '../../limits/sizes.ts';
import type { Intake } from '../../intake/intakeTypes.ts';
import { readFile } from '../../intake/readFile.ts';
import { readPasted } from '../../intake/readPasted.ts';
import { experimentFromRows, takeRows } from '../../intake/takeRows.ts';
import type { TakenRows } from '../../intake/takeRows.ts';
import { forkInUse } from '../../notebook/forkInUse.ts';
import type { Session } from '../../session/session.ts';
import { laterWords } from '../../words/inUse.ts';
import { intakeWords, nothingTakenWords, takenWords, usableWords } from '../../words/page/intake.ts';
import type { TakenTable } from '../../words/page/intake.ts';
import { send } from '../parts/events.ts';
import { PartElement } from '../parts/partElement.ts';
import { ClosedByAddress } from '../parts/closedByAddress.ts';
import { titleWords } from '../../words/titles.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** One file with what the person wants of it. */
interface Offer {
  readonly intake: Intake;
  readonly file: File | null;
  readonly isTaken: boolean;
}

/**
 * Reads what comes in, and asks: what to do with it, and whether the good part of a faulty file is wanted.
 * @fires class-take  detail: intakes for the class view
 * @fires recordings-take  detail: sound files, to be heard one after the other
 * @fires text-taken  the pasted text is done with
 */
@customElement('bench-intake')
export class IntakeElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      dialog {
        inline-size: min(44rem, 94vw);
        max-block-size: 90vh;
        overflow: auto;
      }
      .files {
        list-style: none;
        display: grid;
        gap: var(--gap-3);
        margin-block: var(--gap-3);
        max-block-size: 50vh;
        overflow: auto;
      }
      .files label {
        flex-wrap: nowrap;
      }
      .files input {
        flex: none;
      }
      .files ul {
        padding-inline-start: 1.25rem;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  /** Whether the class view is open: what is whole then goes there without asking. */
  @property({ type: Boolean }) forClass = false;
  @state() private offers: readonly Offer[] = [];
  @query('dialog') private dialog!: HTMLDialogElement;
  protected readonly address = new ClosedByAddress(this, () => this.onCancel());
  private now = (): string => new Date().toISOString();

  /** Reads these files. Never rejects. */
  async takeFiles(files: readonly File[]): Promise<void> {
    if (files.length > MOST_FILES) {
      this.session.tell('problem', laterWords.intakePage.tooMany(files.length, MOST_FILES));
      return;
    }
    const offers: Offer[] = [];
    let bytes = 0;
    for (const file of files) {
      const intake = await readFile(file);
      if (intake.content?.kind !== 'recording') bytes += file.size;
      offers.push(offerOf(intake, file));
      if (bytes > LARGEST_TOTAL_BYTES) {
        this.session.tell('problem', laterWords.intakePage.tooLarge(LARGEST_TOTAL_BYTES));
        return;
      }
    }
    await this.decide(offers);
  }

  /** Reads text that was pasted or typed. */
  async takeText(text: string): Promise<void> {
    const { ends } = this.session.experiment.present;
    const ofThisTable = { forkHz: forkInUse(this.session.presentFork).hz, ends };
    await this.decide([offerOf(readPasted(text, this.forClass ? null : ofThisTable), null)]);
  }

  /** What is whole and leaves no choice is done at once; all else is asked. */
  private async decide(offers: readonly Offer[]): Promise<void> {
    const isWhole = offers.every(({ intake }) => intake.content !== null && intake.faults.length === 0);
    const kinds = new Set(offers.map(({ intake }) => intake.content?.kind));
    // What needs a decision comes first.
    const isSound = ({ intake }: Offer): number => (intake.faults.length === 0 ? 1 : 0);
    this.offers = [...offers].sort((one, other) => isSound(one) - isSound(other));
    if (isWhole && this.forClass && !kinds.has('recording')) this.onClass();
    else if (isWhole && kinds.size === 1 && kinds.has('recording')) this.onListen();
    else if (isWhole && offers.length === 1 && kinds.has('experiment')) await this.onOpen();
    else {
      await this.updateComplete;
      if (!this.dialog.open) this.dialog.showModal();
    }
  }

  private get chosen(): readonly Offer[] {
    return this.offers.filter(({ isTaken, intake }) => isTaken && intake.content !== null);
  }

  private onChoose(index: number): void {
    this.offers = this.offers.map((offer, at) =>
      at === index ? { ...offer, isTaken: !offer.isTaken } : offer,
    );
  }

  private onClass(): void {
    const intakes = this.chosen.map(({ intake }) => intake);
    send(this, 'class-take', intakes);
    this.done();
  }

  private onListen(): void {
    const files = this.chosen.flatMap(({ intake, file }) =>
      intake.content?.kind === 'recording' && file !== null ? [file] : [],
    );
    send(this, 'recordings-take', files);
    this.done();
  }

  /** Every experiment and table as an experiment of its own; the last one stays open. */
  private async onOpen(): Promise<void> {
    const openable = this.chosen.filter(({ intake }) => isOpenable(intake));
    this.done();
    for (const [index, { intake }] of openable.entries()) {
      if (await this.open(intake)) continue;
      // Who wants to stay with what is open isn't asked again for each of the others.
      const left = openable.length - index;
      if (left > 1) this.session.tell('info', laterWords.intakePage.leftClosed(left));
      return;
    }
  }

  /** @returns false where what is open stays open */
  private async open({ content, name }: Intake): Promise<boolean> {
    const { experiments } = this.session;
    if (content?.kind === 'experiment') {
      if (!(await experiments.open(content.experiment, 'open file'))) return false;
      this.session.tell('info', laterWords.intakePage.opened(titleWords(content.experiment)));
    } else if (content?.kind === 'table') {
      const title = name.replace(/\.\w+$/, '');
      const taken = experimentFromRows(title, content.rows, this.outside());
      if (taken.experiment.marks.length === 0) this.tellNothing(title, taken);
      else if (!(await experiments.open(taken.experiment, 'open table'))) return false;
      else this.tellTaken(taken, { kind: 'opened', title });
    }
    return true;
  }

  private onAdd(): void {
    const rows = this.chosen.flatMap(({ intake }) =>
      intake.content?.kind === 'table' ? intake.content.rows : [],
    );
    const taken = takeRows(this.session.experiment, rows, this.outside());
    const count = rows.length - taken.faults.length;
    if (count === 0) this.tellNothing(null, taken);
    else if (this.session.change('add table', () => taken.experiment)) {
      this.tellTaken(taken, { kind: 'added', marks: count });
      this.done();
      return;
    }
    // Nothing was taken: what was pasted stays in its field.
    this.onCancel();
  }

  private tellNothing(title: string | null, { faults }: TakenRows): void {
    this.session.tell('problem', nothingTakenWords(title, faults));
  }

  private tellTaken({ faults, remarks }: TakenRows, table: TakenTable): void {
    this.session.tell(faults.length === 0 ? 'info' : 'problem', takenWords(table, faults, remarks));
  }

  private outside() {
    return { newId: () => this.session.newId(), now: this.now() };
  }

  private onCancel(): void {
    this.dialog.close();
    this.offers = [];
  }

  private done(): void {
    if (this.offers.some(({ file }) => file === null)) send(this, 'text-taken');
    this.onCancel();
  }

  override render() {
    const kinds = new Set(this.chosen.map(({ intake }) => intake.content?.kind));
    const canOpen = this.chosen.some(({ intake }) => isOpenable(intake));
    const openName = this.chosen.length > 1 ? laterWords.intakePage.openEach : laterWords.intakePage.openOne;
    const toClass =
      canOpen || kinds.has('results')
        ? html`<button class=${this.forClass ? 'primary' : ''} @click=${this.onClass}>
            ${laterWords.intakePage.toClass}
          </button>`
        : nothing;
    return html`<dialog aria-labelledby="title" @cancel=${this.onCancel}>
      <h2 id="title">${laterWords.intakePage.heading}</h2>
      ${this.offers.length > 1 ? html`<p>${this.sumWords()}</p>` : nothing}
      <ul class="files" tabindex="0" aria-label=${laterWords.intakePage.files}>
        ${this.offers.map((offer, index) => this.offerItem(offer, index))}
      </ul>
      <div class="row">
        ${this.forClass ? toClass : nothing}
        ${kinds.has('table') ? html`<button class=${this.forClass ? '' : 'primary'} @click=${this.onAdd}>${laterWords.intakePage.add}</button>` : nothing}
        ${canOpen ? html`<button @click=${this.onOpen}>${openName}</button>` : nothing}
        ${this.forClass ? nothing : toClass}
        ${kinds.has('recording') ? html`<button @click=${this.onListen}>${laterWords.intakePage.listen}</button>` : nothing}
        <button @click=${this.onCancel}>
          ${this.chosen.length === 0 ? laterWords.intakePage.close : laterWords.intakePage.cancel}
        </button>
      </div>
    </dialog>`;
  }

  /** How much of what came in is of use. */
  private sumWords(): string {
    const usable = this.offers.filter(({ intake }) => intake.content !== null);
    const faulty = usable.filter(({ intake }) => intake.faults.length > 0);
    return usableWords(this.offers.length, usable.length, faulty.length);
  }

  private offerItem({ intake, isTaken }: Offer, index: number) {
    const words = intakeWords(intake);
    return html`<li>
      <strong>${intake.name}</strong>: ${words.what}
      ${words.remarks.map((remark) => html`<p class="small">${remark}</p>`)}
      ${
        words.faults.length === 0
          ? nothing
          : html`<ul>
              ${words.faults.map((fault) => html`<li class="small">${fault}</li>`)}
            </ul>`
      }
      ${
        words.ask === null
          ? nothing
          : html`<label class="row"
              ><input
                type="checkbox"
                .checked=${live(isTaken)}
                @change=${() => this.onChoose(index)}
              />${words.ask}</label
            >`
      }
    </li>`;
  }
}

/** Whether an experiment comes out of it. */
function isOpenable({ content }: Intake): boolean {
  return content?.kind === 'experiment' || content?.kind === 'table';
}

/** A whole file is wanted unless said otherwise, the good part of a faulty one only when asked for. */
function offerOf(intake: Intake, file: File | null): Offer {
  return { intake, file, isTaken: intake.content !== null && intake.faults.length === 0 };
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-intake': IntakeElement;
  }
}
