import type { SoundListener, SoundSource } from './soundSource.ts';
import { PracticeColumn } from './practice/practiceColumn.ts';

/** Frames a block, as the microphone's worklet sends them. */
const BLOCK_FRAMES = 2048;
/** How often the clock looks whether a block is due, ms: below a block's 43 ms. */
const TICK_MS = 20;
/** A page that was hidden or asleep makes up for this much; the rest never happened in the simulated room. */
const MOST_MADE_UP_S = 1.2;

export interface PracticeClock {
  /** Milliseconds on a clock that never goes back. */
  now(): number;
  /** Calls back every `intervalMs`; what it returns ends that. */
  every(intervalMs: number, callback: () => void): () => void;
}

export interface PracticeSourceOptions {
  /** Sound per second of clock time: 1 is real time; 0 renders only on `advance`. */
  readonly speed?: number;
  readonly clock?: PracticeClock;
}

/** Real time as the browser tells it. */
const PAGE_CLOCK: PracticeClock = {
  now: () => performance.now(),
  every: (intervalMs, callback) => {
    const timer = setInterval(callback, intervalMs);
    return () => clearInterval(timer);
  },
};

/** What makes the sound: the column with its fork, or a swept tone at a column of fixed length. */
export interface PracticeSound {
  readonly sampleRateHz: number;
  render(frames: number): Float32Array;
}

/** The practice column as a source of sound: no permission, no device, nothing played aloud. */
export class PracticeSource implements SoundSource {
  readonly kind = 'practice';
  private readonly clock: PracticeClock;
  private readonly speed: number;
  private listener: SoundListener | null = null;
  private endTicks: (() => void) | null = null;
  private lastNowMs = 0;
  /** Frames asked for by the clock and not yet rendered; a fraction, so that time doesn't drift. */
  private owedFrames = 0;
  private nextFrame = 0;

  /** @param column  the hands act on it directly while this source runs */
  constructor(
    readonly column: PracticeSound = new PracticeColumn(),
    options: PracticeSourceOptions = {},
  ) {
    this.clock = options.clock ?? PAGE_CLOCK;
    this.speed = options.speed ?? 1;
    if (!(this.speed >= 0 && this.speed <= 100)) {
      throw new RangeError(`speed must be 0..100, got ${this.speed}`);
    }
  }

  start(listener: SoundListener): Promise<void> {
    this.stop();
    this.listener = listener;
    this.owedFrames = 0;
    this.nextFrame = 0;
    this.lastNowMs = this.clock.now();
    listener.onState({ kind: 'running', sampleRateHz: this.column.sampleRateHz, settings: null });
    if (this.speed > 0) this.endTicks = this.clock.every(TICK_MS, () => this.tick());
    return Promise.resolve();
  }

  stop(): void {
    this.endTicks?.();
    this.endTicks = null;
    const listener = this.listener;
    this.listener = null;
    listener?.onState({ kind: 'idle' });
  }

  /** Renders this much sound at once, whatever the clock says; for tests and demonstrations. @param seconds  >= 0 */
  advance(seconds: number): void {
    this.owe(seconds);
  }

  private tick(): void {
    const nowMs = this.clock.now();
    const elapsedS = (nowMs - this.lastNowMs) / 1000;
    this.lastNowMs = nowMs;
    this.owe(Math.min(elapsedS, MOST_MADE_UP_S) * this.speed);
  }

  private owe(seconds: number): void {
    this.owedFrames += seconds * this.column.sampleRateHz;
    while (this.owedFrames >= BLOCK_FRAMES) {
      // A listener may stop the source while it hears a block.
      if (this.listener === null) return;
      this.owedFrames -= BLOCK_FRAMES;
      const startFrame = this.nextFrame;
      this.nextFrame += BLOCK_FRAMES;
      this.listener.onBlock({ samples: this.column.render(BLOCK_FRAMES), startFrame, discontinuity: false });
    }
  }
}
