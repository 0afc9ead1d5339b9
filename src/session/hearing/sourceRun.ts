import type {
  CaptureFailure,
  CaptureState,
  SampleBlock,
  SoundListener,
  SoundSource,
} from '../../capture/soundSource.ts';
import type { ListeningLike, ListeningOrder } from './listeningLike.ts';
import { LongListening } from '../recording/longListening.ts';
import { RecordingListening } from '../recording/recordingListening.ts';
import type { ForkPitch, ListeningReport, ListeningUpdate, Resonance } from './listeningTypes.ts';
import { whyNotHeard } from './whyNotHeard.ts';

/** A passage is judged at most 1.25 s after its middle: so long a fork that was put away is still listened for, s. */
const LATE_S = 1.5;

/** @param changedS  when the fork was changed, s on the source's time axis */
export type LateFlag = (resonance: Resonance, changedS: number) => void;

/** The listening for the fork before, while its last passage may still be judged. */
interface Leaving {
  readonly listening: ListeningLike;
  /** When the fork was changed, s on the source's time axis. */
  readonly changedS: number;
  readonly onLate: LateFlag;
}

export interface ListenHandlers {
  onUpdate(update: ListeningUpdate): void;
  onState(state: CaptureState): void;
  /** Every block, after the stages have heard it. */
  onBlock?(block: SampleBlock): void;
  /** Once, when the source has ended by itself: what was detected offline in the whole. */
  onReport(report: ListeningReport): void;
}

/** One run: a source, and the listening that its blocks go through. */
export class SourceRun implements SoundListener {
  private listening: ListeningLike | null = null;
  private sampleRateHz: number | null = null;
  private over = false;
  private leaving: Leaving | null = null;
  private heardS = 0;
  /** Number of the newest sounding: the next listening counts on. */
  private lastSounding = 0;

  constructor(
    readonly source: SoundSource,
    private fork: ForkPitch,
    private readonly create: (order: Omit<ListeningOrder, 'tube'>) => ListeningLike,
    private readonly handlers: ListenHandlers,
  ) {}

  start(): Promise<void> {
    return this.source.start(this);
  }

  /**
   * Listens for another fork from the next block on. Not for a recording: what was heard of it would be missing.
   * @param onLate  called for each passage of the fork before that is flagged only now
   */
  retune(fork: ForkPitch, onLate: LateFlag): void {
    this.fork = fork;
    if (this.sampleRateHz === null || this.over) return;
    this.letGo();
    const before = this.listening;
    if (!this.tune(this.sampleRateHz) || before === null) return;
    this.leaving = { listening: before, changedS: this.heardS, onLate };
  }

  /** Ends the run; nothing is reported afterwards. Safe to call twice. */
  stop(): void {
    if (this.over) return;
    this.over = true;
    this.source.stop();
    this.letGo();
    if (this.listening !== null) this.pass(this.listening.finish());
    this.handlers.onState({ kind: 'idle' });
  }

  onBlock(block: SampleBlock): void {
    if (this.over || this.listening === null) return;
    this.heardS = (block.startFrame + block.samples.length) / (this.sampleRateHz ?? 1);
    this.hearLeaving(block);
    this.pass(this.listening.push(block));
    this.handlers.onBlock?.(block);
  }

  onState(state: CaptureState): void {
    if (this.over) return;
    if (state.kind === 'running' && state.sampleRateHz !== this.sampleRateHz) {
      this.sampleRateHz = state.sampleRateHz;
      if (!this.tune(state.sampleRateHz)) return;
    }
    if (state.kind === 'ended' || state.kind === 'failed') this.letGo();
    if (state.kind === 'ended') this.end();
    this.handlers.onState(state);
    if (state.kind === 'ended' || state.kind === 'failed') this.over = true;
  }

  private end(): void {
    if (this.listening === null) return;
    this.pass(this.listening.finish());
    this.handlers.onReport(this.listening.offlineReport());
  }

  private pass(update: ListeningUpdate): void {
    for (const { index } of update.soundings) this.lastSounding = Math.max(this.lastSounding, index);
    this.handlers.onUpdate(update);
  }

  private hearLeaving(block: SampleBlock): void {
    const { leaving } = this;
    if (leaving === null) return;
    tellLate(leaving, leaving.listening.push(block));
    if (this.heardS > leaving.changedS + LATE_S) this.letGo();
  }

  private letGo(): void {
    const { leaving } = this;
    this.leaving = null;
    if (leaving !== null) tellLate(leaving, leaving.listening.finish());
  }

  /** A fork that this sample rate can't carry is a failure the page shows, not a crash. */
  private tune(sampleRateHz: number): boolean {
    const { fork } = this;
    const unfit = whyNotHeard(sampleRateHz, fork.nominalHz);
    if (unfit !== null) return this.fail({ code: 'pitch-unheard', why: unfit });
    try {
      const create = (): ListeningLike => this.create({ sampleRateHz, fork });
      // A recording is detected offline as a whole; what goes on for hours is forgotten.
      this.listening =
        this.source.kind === 'recording'
          ? new RecordingListening(sampleRateHz, create)
          : new LongListening(sampleRateHz, create, { firstSounding: this.lastSounding + 1 });
      return true;
    } catch (error) {
      const said = error instanceof Error ? error.message : String(error);
      return this.fail({ code: 'capture-broken', what: 'listening', said });
    }
  }

  private fail(failure: CaptureFailure): false {
    this.over = true;
    this.source.stop();
    this.handlers.onState({ kind: 'failed', failure });
    return false;
  }
}

function tellLate({ changedS, onLate }: Leaving, { resonances }: ListeningUpdate): void {
  for (const resonance of resonances) if (resonance.timeS <= changedS) onLate(resonance, changedS);
}
