import type { CaptureState, SampleBlock, SoundListener, SoundSource } from '../capture/soundSource.ts';
import type { CreateListening, ListeningLike } from './listeningLike.ts';
import { LongListening } from './longListening.ts';
import type { ForkPitch, ListeningReport, ListeningUpdate } from './listeningTypes.ts';

export interface ListenHandlers {
  onUpdate(update: ListeningUpdate): void;
  onState(state: CaptureState): void;
  /** Every block, after the stages have heard it. */
  onBlock?(block: SampleBlock): void;
  /** Once, when the source has ended by itself: what a second look at the whole found. */
  onReport(report: ListeningReport): void;
}

/** One run: a source, and the listening that its blocks go through. */
export class BenchListen implements SoundListener {
  private listening: ListeningLike | null = null;
  private sampleRateHz: number | null = null;
  private over = false;

  constructor(
    readonly source: SoundSource,
    private fork: ForkPitch,
    private readonly create: CreateListening,
    private readonly handlers: ListenHandlers,
  ) {}

  start(): Promise<void> {
    return this.source.start(this);
  }

  /** Listens for another fork from the next block on. */
  retune(fork: ForkPitch): void {
    this.fork = fork;
    if (this.sampleRateHz !== null && !this.over) this.tune(this.sampleRateHz);
  }

  /** Ends the run; nothing is reported afterwards. Safe to call twice. */
  stop(): void {
    if (this.over) return;
    this.over = true;
    this.source.stop();
    if (this.listening !== null) this.handlers.onUpdate(this.listening.finish());
    this.handlers.onState({ kind: 'idle' });
  }

  onBlock(block: SampleBlock): void {
    if (this.over || this.listening === null) return;
    this.handlers.onUpdate(this.listening.push(block));
    this.handlers.onBlock?.(block);
  }

  onState(state: CaptureState): void {
    if (this.over) return;
    if (state.kind === 'running' && state.sampleRateHz !== this.sampleRateHz) {
      this.sampleRateHz = state.sampleRateHz;
      if (!this.tune(state.sampleRateHz)) return;
    }
    if (state.kind === 'ended') this.end();
    this.handlers.onState(state);
    if (state.kind === 'ended' || state.kind === 'failed') this.over = true;
  }

  private end(): void {
    if (this.listening === null) return;
    this.handlers.onUpdate(this.listening.finish());
    this.handlers.onReport(this.listening.secondLook());
  }

  /** A fork that this sample rate can't carry is a failure the page shows, not a crash. */
  private tune(sampleRateHz: number): boolean {
    try {
      const { fork } = this;
      const create = (): ListeningLike => this.create({ sampleRateHz, fork });
      // A recording gets a second look at its whole; what goes on for hours must not be kept whole.
      this.listening = this.source.kind === 'recording' ? create() : new LongListening(sampleRateHz, create);
      return true;
    } catch (error) {
      this.over = true;
      this.source.stop();
      const message = error instanceof Error ? error.message : String(error);
      this.handlers.onState({ kind: 'failed', failure: { code: 'capture-broken', message } });
      return false;
    }
  }
}
