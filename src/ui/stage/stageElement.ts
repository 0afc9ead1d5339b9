import { css, html, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { MicrophoneSource } from '../../capture/microphoneSource.ts';
import { PracticeSource } from '../../capture/practiceSource.ts';
import { PracticeRun } from '../../session/hearing/practiceRun.ts';
import type { Lesson } from '../../notebook/experiment.ts';
import type { Session } from '../../session/session.ts';
import { words } from '../../words/inUse.ts';
import { ruleReadingWords } from '../../words/page/columnPicture.ts';
import { SessionWatch } from '../sessionWatch.ts';
import type { PageEvent } from '../parts/events.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import type { SourceKind } from './sourceKind.ts';
import '../capture/captureStateElement.ts';
import './columnElement.ts';
import './drawnElement.ts';
import type { Drawn } from './drawn.ts';
import './groupNameElement.ts';
import './guideElement.ts';
import './nowElement.ts';
import './practiceDeskElement.ts';
import './readoutElement.ts';
import './sourceElement.ts';

/** A flash long enough to be seen from the corner of the eye, far slower than 3 Hz. */
const FLASH_MS = 1200;
/** A key that is held down speaks once it is let go. */
const SPOKEN_AFTER_MS = 500;
/** Where the handle of a real tube waits until somebody takes it, m. */
const UNKNOWN_M = 0.3;
/** No column is drawn shorter, m. */
const SHORTEST_M = 0.02;

/** The experiment itself: where sound comes from, what is heard, the column on its rule, the practice hands. */
@customElement('bench-stage')
export class StageElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      .stage {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: var(--gap-3);
      }
      .flash {
        box-shadow: 0 0 0 0.9rem var(--tone-fill);
        background: var(--tone-wash);
      }
      /* Shadows and backgrounds are not drawn there. */
      @media (forced-colors: active) {
        .flash {
          outline: 0.9rem solid Highlight;
        }
      }
      @media (prefers-reduced-motion: no-preference) {
        .stage {
          transition:
            box-shadow 0.5s ease-out,
            background 0.5s ease-out;
        }
        .flash {
          transition: none;
        }
      }
      .lesson {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--gap-2) var(--gap-3);
      }
      .task {
        flex: 1 1 20rem;
        border-inline-start: 5px solid var(--ink);
        padding: var(--gap-2) var(--gap-3);
        background: var(--sheet);
        white-space: pre-line;
      }
      .controls {
        display: flex;
        flex-wrap: wrap;
        justify-content: space-between;
        align-items: end;
        gap: var(--gap-2) var(--gap-4);
      }
      /* So high that a failure takes the place of the level and the picture stays where it is. */
      .readings {
        display: grid;
        gap: var(--gap-2);
        align-content: start;
        min-block-size: var(--readings, 11.75rem);
      }
      /* Beside the level and not below it: on a low screen the hands then stay above the line along the lower edge. */
      @media (min-width: 1100px) {
        .readings.guided {
          grid-template-columns: minmax(0, 1fr) minmax(22rem, 34%);
          gap: var(--gap-4);
          align-items: center;
          min-block-size: 8.5rem;
        }
        bench-guide[wide] {
          grid-column: 1 / -1;
        }
      }
      @media (max-width: 760px) {
        .stage {
          gap: var(--gap-2);
        }
        /* Held in a hand, all that chooses has one line while the page listens. */
        .controls.listening {
          flex-wrap: nowrap;
          gap: var(--gap-2);
        }
        .controls bench-now {
          flex: 1 1 16rem;
          min-inline-size: 0;
        }
        .controls.listening bench-now {
          flex-basis: 0;
        }
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  /** What it is there for: to measure, to check something, or as a picture for views that need the room. */
  @property() use: 'measure' | 'check' | 'picture' = 'measure';
  @state() private kind: SourceKind = 'practice';
  @state() private isFlashing = false;
  /** Where the column is drawn when the tube is real: where the handle was put. Null: nobody has told how long it is. */
  @state() private drawnLengthM: number | null = null;
  @state() private drawn: Drawn = { wave: 'pressure', expected: true };
  @query('bench-column') private column!: HTMLElementTagNameMap['bench-column'] | null;
  @query('bench-source') private source!: HTMLElementTagNameMap['bench-source'];
  @query('bench-practice-desk') private desk!: HTMLElementTagNameMap['bench-practice-desk'] | null;
  private practice!: PracticeRun;
  private foundBefore = 0;
  /** Where a key has put the column's end, for the ear. */
  @state() private spokenLength = '';
  private speaks = 0;
  protected readonly watch = new SessionWatch(this, ['notebook', 'capture', 'live'], () => this.onSession());

  override willUpdate(): void {
    this.practice ??= new PracticeRun(this.session.experiment, practiceSeed());
  }

  /** Begins to listen, or stops. */
  toggleListening(): void {
    this.source.toggle();
  }

  /** Strikes the practice fork; nothing where the fork is real. */
  strike(): void {
    this.desk?.strike();
  }

  /** Brings the practice fork to the mouth, or takes it away. */
  toggleFork(): void {
    this.desk?.toggleFork();
  }

  /** Puts the keyboard into the length that is typed next. */
  async focusLength(): Promise<void> {
    await this.updateComplete;
    await this.column?.focusLength();
  }

  /** Slides the column on or back. @param byM  metres, positive to lengthen it */
  slideBy(byM: number): void {
    const isPractice = this.kind === 'practice';
    const fromM = isPractice ? this.practice.column.goalM : (this.drawnLengthM ?? UNKNOWN_M);
    this.slideTo(Math.min(Math.max(fromM + byM, SHORTEST_M), this.session.experiment.tube.travelM));
    clearTimeout(this.speaks);
    this.speaks = window.setTimeout(() => this.speakLength(), SPOKEN_AFTER_MS);
  }

  /** The slider itself speaks where it has the keyboard. */
  private speakLength(): void {
    const lengthM = this.kind === 'practice' ? this.practice.column.goalM : (this.drawnLengthM ?? UNKNOWN_M);
    const readingM = this.session.experiment.rule.zeroOffsetM + lengthM;
    this.spokenLength = this.column?.hasKeyboard === true ? '' : ruleReadingWords(readingM);
  }

  private onSession(): void {
    this.practice.follow(this.session.experiment);
    // A mark asks for hands and eyes. What only may be a resonance doesn't.
    const { found } = this.session.hearing;
    if (found > this.foundBefore) this.flash();
    this.foundBefore = found;
    this.requestUpdate();
  }

  private flash(): void {
    this.isFlashing = true;
    navigator.vibrate?.(120);
    setTimeout(() => (this.isFlashing = false), FLASH_MS);
  }

  private onSource(event: PageEvent<'source-change'>): void {
    this.kind = event.detail;
  }

  private onListen(): void {
    void this.session.hearing.start(
      this.kind === 'microphone'
        ? new MicrophoneSource({ deviceId: this.session.hearing.microphoneId })
        : new PracticeSource(this.practice.column),
    );
  }

  /** Listens to recordings one after the other; stopping one stops them all. */
  async openRecordings(files: readonly File[]): Promise<void> {
    this.kind = 'recording';
    const onProgress = (share: number): void => this.session.hearing.setProgress(share);
    // What reads recordings comes with the first one.
    const { RecordingSource } = await import('../../capture/recordingSource.ts');
    for (const file of files) {
      await this.session.hearing.start(new RecordingSource(file, { onProgress }));
      if (this.session.hearing.capture.kind === 'idle') return;
    }
  }

  private onRecording(event: PageEvent<'recording-open'>): void {
    void this.openRecordings([event.detail]);
  }

  private onDrawn(event: PageEvent<'drawn-change'>): void {
    this.drawn = event.detail;
  }

  private onSlide(event: PageEvent<'slide'>): void {
    this.slideTo(event.detail);
  }

  private onSlideBy(event: PageEvent<'slide-by'>): void {
    this.slideBy(event.detail);
  }

  private slideTo(lengthM: number): void {
    if (this.kind === 'practice') this.practice.slideTo(lengthM, this.session.hearing.isListening);
    else this.drawnLengthM = lengthM;
    this.requestUpdate();
  }

  override render() {
    const isPractice = this.kind === 'practice';
    const { lesson } = this.session.experiment;
    const isWithheld = lesson?.hideExpected === true;
    const isLive = this.use !== 'picture';
    return html`
      <div class="stage ${this.isFlashing ? 'flash' : ''}">
        <div class="controls ${this.session.hearing.isListening ? 'listening' : ''}">
          <bench-source
            ?hidden=${!isLive && !this.session.hearing.isListening}
            .session=${this.session}
            .kind=${this.kind}
            @source-change=${this.onSource}
            @listen-start=${this.onListen}
            @recording-open=${this.onRecording}
          ></bench-source>
          <bench-now .session=${this.session}></bench-now>
        </div>
        ${lesson === undefined ? nothing : this.lessonPart(lesson)}
        ${isLive ? this.readings() : this.captureState()}
        ${
          // A check of a real column needs the room for its cards.
          isPractice || this.use !== 'check' ? this.columnPart(isPractice, isWithheld) : nothing
        }
        ${isLive ? this.hands(isPractice, isWithheld) : nothing}
        <p class="unseen" role="status">${this.spokenLength}</p>
      </div>
    `;
  }

  private onGroupAnswered(): void {
    this.renderRoot.querySelector('bench-source')?.focusListening();
  }

  private lessonPart({ task, language }: Lesson) {
    return html`<div class="lesson">
      ${task === '' ? nothing : html`<p class="task"><strong>${words.task.task}</strong> <span lang=${language ?? ''}>${task}</span></p>`}
      ${this.use === 'measure' ? html`<bench-group-name .session=${this.session} @group-answered=${this.onGroupAnswered}></bench-group-name>` : nothing}
    </div>`;
  }

  private columnPart(isPractice: boolean, isWithheld: boolean) {
    const { column } = this.practice;
    return html`<bench-column
      .session=${this.session}
      ?isTyped=${this.use === 'measure'}
      .lengthM=${isPractice ? column.lengthM : (this.drawnLengthM ?? UNKNOWN_M)}
      .goalM=${isPractice ? column.goalM : (this.drawnLengthM ?? UNKNOWN_M)}
      .isHeard=${isPractice}
      .isSet=${isPractice || this.drawnLengthM !== null}
      .showExpected=${this.drawn.expected && !isWithheld}
      .showWave=${this.drawn.wave !== 'none' && (!isWithheld || this.session.hearing.isListening)}
      .quantity=${this.drawn.wave === 'displacement' ? 'displacement' : 'pressure'}
      .forkAtMouth=${isPractice ? column.forkIsAtMouth : true}
      @slide=${this.onSlide}
    ></bench-column>`;
  }

  private captureState() {
    return html`<bench-capture-state
      .session=${this.session}
      @listen-start=${this.onListen}
    ></bench-capture-state>`;
  }

  private hands(isPractice: boolean, isWithheld: boolean) {
    const drawn =
      this.use === 'measure'
        ? html`<bench-drawn
            .drawn=${this.drawn}
            ?withheld=${isWithheld}
            @drawn-change=${this.onDrawn}
          ></bench-drawn>`
        : nothing;
    if (!isPractice) return drawn;
    return html`<bench-practice-desk
      .session=${this.session}
      .practice=${this.practice}
      @listen-start=${this.onListen}
      @slide-by=${this.onSlideBy}
      >${drawn}</bench-practice-desk
    >`;
  }

  /** A failure or a pause stands where the level would: nothing below it moves. What to do next is said once. */
  private readings() {
    const { kind } = this.session.hearing.capture;
    const isGuided = this.kind === 'practice' && this.use === 'measure';
    return html`<div class="readings ${isGuided ? 'guided' : ''}">
      ${
        kind === 'failed' || kind === 'interrupted'
          ? this.captureState()
          : html`<bench-readout
              .session=${this.session}
              kind=${this.kind}
              ?wordless=${isGuided}
            ></bench-readout>`
      }
      ${
        isGuided
          ? html`<bench-guide .session=${this.session} .practice=${this.practice}></bench-guide>`
          : nothing
      }
    </div>`;
  }
}

/** Another fork and another room for each visit. */
function practiceSeed(): number {
  return crypto.getRandomValues(new Uint32Array(1))[0] ?? 1;
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-stage': StageElement;
  }
}
