import { css, html, nothing } from 'lit';
import { query, state } from 'lit/decorators.js';
import type { Session } from '../session/session.ts';
import type { ClassDesk } from '../classroom/classDesk.ts';
import { words } from '../words/inUse.ts';
import type { Language } from '../words/language.ts';
import { SessionWatch } from './sessionWatch.ts';
import { createSession } from './createSession.ts';
import { DropAndPaste } from './intake/dropAndPaste.ts';
import { LeaveWarning } from './leaveWarning.ts';
import { PageFaults } from './pageFaults.ts';
import { keyCommand } from './keyCommand.ts';
import type { KeyCommand } from './keyCommand.ts';
import type { PageEvent } from './parts/events.ts';
import type { AskElement } from './parts/askElement.ts';
import { PartElement } from './parts/partElement.ts';
import { redrawAll } from './redrawAll.ts';
import { saveExperiment } from './saveFile.ts';
import { sharedStyles } from './sharedStyles.ts';
import { LongPaste } from './parts/longPaste.ts';
import { chooseLanguage, laterTexts } from './languageChoice.ts';
import { LATER_VIEWS, listedView, viewOf } from './views.ts';
import type { ViewId } from './views.ts';
import './measure/marksElement.ts';
import './parts/headerElement.ts';
import './parts/noticeElement.ts';
import './records/keepingBarElement.ts';
import { FINE_STEP_M, STEP_M } from './stage/slideSteps.ts';
import './stage/stageElement.ts';
import './stage/stripElement.ts';

/** Addresses that bring something along, beside those that name a view. */
const BRINGING = /^#(lesson|reveal|group|part)=/;
/** Those of them that go to the class. */
const TO_CLASS = /^#(group|part)=/;

/** The whole page: the experiment on top, the chosen view below it. `main.ts` defines it when it has its texts. */
export class AppElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      :host {
        min-block-size: 100vh;
      }
      main {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: var(--gap-3);
        padding: var(--gap-2) clamp(0.75rem, 2vw, 1.5rem) 5rem;
        max-inline-size: 110rem;
        margin-inline: auto;
      }
      .measure {
        display: grid;
        grid-template-columns: minmax(0, 5fr) minmax(0, 4fr);
        gap: var(--gap-4) var(--gap-5);
        align-items: start;
      }
      @media (max-width: 900px) {
        .measure {
          grid-template-columns: minmax(0, 1fr);
        }
        .measure > .stack {
          --strip-height: 9rem;
        }
      }
      .drop {
        position: fixed;
        inset: 0;
        display: grid;
        place-items: center;
        background: var(--tone-wash);
        border: 6px dashed var(--tone);
        font-size: 2rem;
        opacity: 0.92;
        z-index: 6;
        pointer-events: none;
      }
      /* On paper only what the view has to say. */
      @media print {
        bench-header,
        bench-keeping-bar,
        bench-stage,
        bench-notice {
          display: none;
        }
        main {
          padding: 0;
          max-inline-size: none;
        }
      }
    `,
  ];

  readonly session: Session = createSession();
  @state() private view: ViewId = 'measure';
  @query('bench-stage') private stage!: HTMLElementTagNameMap['bench-stage'];
  /** Made when the class view is first needed; kept while the page is open. */
  @state() private desk: ClassDesk | null = null;
  @query('bench-intake') private intake!: HTMLElementTagNameMap['bench-intake'];
  private readonly drop = new DropAndPaste(this, {
    onFiles: (files) => void this.bringIn((intake) => intake.takeFiles(files)),
    onText: (text) => void this.bringIn((intake) => intake.takeText(text)),
  });
  protected readonly longPaste = new LongPaste(this, (message) => this.session.tell('problem', message));
  @query('bench-keys') private keys!: HTMLElementTagNameMap['bench-keys'];
  /** Whether what is said of sound and speed is there. */
  @state() private isMeasured = false;
  protected readonly watch = new SessionWatch(this, ['capture']);
  protected readonly lengths = new SessionWatch(
    this,
    ['notebook', 'capture'],
    () => void this.onceMeasured(),
  );
  protected readonly faults = new PageFaults(this, (message) => this.session.tell('problem', message));
  protected readonly leaving = new LeaveWarning(this);
  @query('bench-ask') private asking!: AskElement;
  private readonly onHash = (): void => void this.followAddress();
  private readonly onKey = (event: KeyboardEvent): void => this.takeKey(event);
  // Of parts that have failed, this element among them: its own template may be what is missing.
  private readonly onStepUndo = (): void => this.session.undo();
  private readonly onExperimentSave = (): void => saveExperiment(this.session.experiment);

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('hashchange', this.onHash);
    addEventListener('keydown', this.onKey);
    this.addEventListener('step-undo', this.onStepUndo);
    this.addEventListener('experiment-save', this.onExperimentSave);
    void this.begin();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener('hashchange', this.onHash);
    removeEventListener('keydown', this.onKey);
    this.removeEventListener('step-undo', this.onStepUndo);
    this.removeEventListener('experiment-save', this.onExperimentSave);
    this.session.hearing.stop();
  }

  /** The last experiment comes back; a lesson link sets up a new one beside it. */
  private async begin(): Promise<void> {
    this.session.experiments.askFirst = () => this.askFirst();
    await this.session.restore();
    await this.followAddress();
  }

  /** What a link brings may also arrive in a tab that has the bench already. */
  private async followAddress(): Promise<void> {
    const { hash } = location;
    const isBringing = BRINGING.test(hash);
    if (isBringing) history.replaceState(null, '', TO_CLASS.test(hash) ? '#class' : '#measure');
    await this.goTo(viewOf(location.hash));
    if (!isBringing) return;
    await laterTexts();
    const { arrive } = await import('./arrivals.ts');
    await arrive(
      hash,
      this.session,
      () => this.openDesk(),
      (language) => this.speak(language),
    );
  }

  /** Work that storage refused is in this tab's memory only. */
  private async askFirst(): Promise<boolean> {
    await laterTexts();
    const { askToLeave } = await import('./parts/askToLeave.ts');
    return askToLeave(this.asking, this.session);
  }

  /** What is heard, typed and chosen stays: only what is said is drawn anew. */
  private async speak(language: Language): Promise<void> {
    try {
      await chooseLanguage(language, document);
    } catch {
      this.session.tell('problem', words.frame.languageNotLoaded);
    }
    redrawAll(document);
  }

  /** Views that aren't needed to listen come when they are first opened. */
  private async goTo(view: ViewId): Promise<void> {
    const loadView = LATER_VIEWS[view];
    if (loadView !== undefined) {
      // Before the view: parts that it brings may stand in the first one already, and speak as soon as they are known.
      await laterTexts();
      await loadView();
    }
    if (view === 'class') await this.openDesk();
    // Whoever has gone on while it loaded isn't brought back.
    if (view !== viewOf(location.hash)) return;
    this.view = view;
    await this.updateComplete;
  }

  /** What is said of sound and speed comes with the first sound or length. */
  private async onceMeasured(): Promise<void> {
    const { experiment, hearing } = this.session;
    const isMeasured = hearing.isListening || experiment.marks.some(({ lengthM }) => lengthM !== null);
    if (this.isMeasured || !isMeasured) return;
    await laterTexts();
    await import('./measure/onceMeasured.ts');
    this.isMeasured = true;
  }

  /** What reads files comes when the first one does. */
  private async bringIn(
    take: (intake: HTMLElementTagNameMap['bench-intake']) => Promise<void>,
  ): Promise<void> {
    await laterTexts();
    await import('./intake/intakeElement.ts');
    await take(this.intake);
  }

  private async openDesk(): Promise<ClassDesk> {
    await laterTexts();
    const { newClassDesk } = await import('./class/newClassDesk.ts');
    return (this.desk ??= newClassDesk());
  }

  private async onClassTake(event: PageEvent<'class-take'>): Promise<void> {
    const desk = await this.openDesk();
    const count = await desk.add(event.detail);
    location.hash = '#class';
    await this.goTo('class');
    const remarks = new Set(event.detail.flatMap((intake) => intake.remarks));
    this.session.tell('info', [words.frame.groupsTaken(count), ...remarks].join(' '));
  }

  private async onRecordings(event: PageEvent<'recordings-take'>): Promise<void> {
    location.hash = '#measure';
    await this.goTo('measure');
    await this.stage.openRecordings(event.detail);
  }

  private onFilesBring(event: PageEvent<'files-bring'>): void {
    void this.bringIn((intake) => intake.takeFiles(event.detail));
  }

  private onTextBring(event: PageEvent<'text-bring'>): void {
    void this.bringIn((intake) => intake.takeText(event.detail));
  }

  private onTextTaken(): void {
    this.renderRoot
      .querySelector('bench-records, bench-class')
      ?.shadowRoot?.querySelector('bench-bring-in')
      ?.clearText();
  }

  private takeKey(event: KeyboardEvent): void {
    const command = keyCommand(event, event.composedPath().at(0));
    if (command === null) return;
    event.preventDefault();
    this.run(command);
  }

  private run(command: KeyCommand): void {
    const commands: Record<KeyCommand, () => void> = {
      listen: () => this.stage.toggleListening(),
      mark: () => this.session.addMarkByHand(null),
      keep: () => this.session.hearing.keepMaybe(),
      lengths: () => void this.toLengths(),
      strike: () => this.stage.strike(),
      fork: () => this.stage.toggleFork(),
      shorter: () => this.stage.slideBy(-STEP_M),
      longer: () => this.stage.slideBy(STEP_M),
      'shorter-fine': () => this.stage.slideBy(-FINE_STEP_M),
      'longer-fine': () => this.stage.slideBy(FINE_STEP_M),
      undo: () => this.session.undo(),
      redo: () => this.session.redo(),
      keys: () => void this.showKeys(),
    };
    commands[command]();
  }

  /** Whoever has gone elsewhere while they loaded isn't shown them. */
  private async showKeys(): Promise<void> {
    const { hash } = location;
    await laterTexts();
    await import('./parts/keysElement.ts');
    if (location.hash === hash) await this.keys.show();
  }

  private async toLengths(): Promise<void> {
    location.hash = '#measure';
    await this.goTo('measure');
    await this.stage.updateComplete;
    await this.stage.focusLength();
  }

  private async onForkAdd(): Promise<void> {
    location.hash = '#apparatus';
    await this.goTo('apparatus');
    await this.renderRoot.querySelector('bench-apparatus')?.focusForks();
  }

  /** What is doubtful stands with the strip, and what it is about a moment's scroll away. */
  private async onDoubts(): Promise<void> {
    location.hash = '#measure';
    await this.goTo('measure');
    const doubts = this.renderRoot.querySelector<HTMLElement>('.doubts');
    doubts?.scrollIntoView({ block: 'center' });
    doubts?.focus({ preventScroll: true });
  }

  override render() {
    const { view } = this;
    const isLive = view === 'measure' || view === 'check';
    // The list of records has no use for the picture, the keys that listen have.
    const isStageHidden =
      view !== listedView(view) || (view === 'records' && !this.session.hearing.isListening);
    return html`
      <bench-header
        .session=${this.session}
        .view=${this.view}
        @keys-show=${() => this.run('keys')}
        @language-choose=${(event: PageEvent<'language-choose'>) => void this.speak(event.detail)}
      ></bench-header>
      <bench-keeping-bar .session=${this.session}></bench-keeping-bar>
      <main @files-bring=${this.onFilesBring} @text-bring=${this.onTextBring}>
        <bench-stage
          .session=${this.session}
          use=${isLive ? view : 'picture'}
          ?hidden=${isStageHidden}
          @fork-add=${this.onForkAdd}
        ></bench-stage>
        ${this.content()}
      </main>
      <bench-notice
        .session=${this.session}
        @lengths-show=${() => this.run('lengths')}
        @doubts-show=${this.onDoubts}
      ></bench-notice>
      <bench-keys></bench-keys>
      <bench-ask></bench-ask>
      <bench-intake
        .session=${this.session}
        .forClass=${this.view === 'class'}
        @class-take=${this.onClassTake}
        @recordings-take=${this.onRecordings}
        @text-taken=${this.onTextTaken}
      ></bench-intake>
      ${this.drop.isOver ? html`<div class="drop">${words.frame.drop}</div>` : nothing}
    `;
  }

  private content() {
    switch (this.view) {
      case 'measure':
        return html`<div class="measure">
          <bench-marks .session=${this.session} @lengths-show=${() => this.run('lengths')}></bench-marks>
          <div class="stack">
            <bench-strip .session=${this.session}></bench-strip>
            ${this.isMeasured ? html`<bench-result .session=${this.session}></bench-result>` : nothing}
            <div class="doubts stack" tabindex="-1">
              ${
                this.isMeasured
                  ? html`<bench-trust .session=${this.session}></bench-trust>
                      <bench-warnings .session=${this.session}></bench-warnings>`
                  : nothing
              }
            </div>
          </div>
        </div>`;
      case 'apparatus':
        return html`<bench-apparatus .session=${this.session}></bench-apparatus>`;
      case 'working':
        return html`<bench-working .session=${this.session}></bench-working>`;
      case 'records':
        return html`<bench-records .session=${this.session}></bench-records>`;
      case 'microphone':
        return html`<bench-microphone></bench-microphone>`;
      case 'class':
        return this.desk === null
          ? nothing
          : html`<bench-class .session=${this.session} .desk=${this.desk}></bench-class>`;
      case 'report':
        return html`<bench-report .session=${this.session}></bench-report>`;
      case 'check':
        return html`${this.isMeasured ? html`<bench-trust .session=${this.session}></bench-trust>` : nothing}
          <bench-check .session=${this.session}></bench-check>`;
      case 'compare':
        return html`<bench-compare .session=${this.session}></bench-compare>`;
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-app': AppElement;
  }
}
