import { FlankMeter } from './flankMeter.ts';
import type { FlankFrame } from './flankMeter.ts';
import { ForkBand } from './forkBand.ts';
import type { SteadyTone } from './steadyTone.ts';

/** What the tone stage hands on: the narrow stream and the flanks, each on its own even time grid. */
export interface ToneListener {
  /** The next narrow value; value k belongs to k / narrowRateHz. */
  onValue(re: number, im: number): void;
  onFlanks(frame: FlankFrame): void;
}

/** Samples in; complex tone values (about 100 a second) and flank noise (about 12 a second) out. */
export class ToneStream {
  readonly narrowRateHz: number;
  readonly narrowBandwidthHz: number;
  /** How long after a moment its value comes out, s. */
  readonly delayS: number;
  readonly #band: ForkBand;
  readonly #flanks: FlankMeter;

  /** @throws RangeError when the pitch doesn't fit the sample rate */
  constructor(sampleRateHz: number, frequencyHz: number, listener: ToneListener) {
    // The band first: it checks the pitch against the rate.
    let flanks: FlankMeter | null = null;
    this.#band = new ForkBand(sampleRateHz, frequencyHz, {
      onWide: (re, im) => {
        const frame = flanks?.push(re, im) ?? null;
        if (frame !== null) listener.onFlanks(frame);
      },
      onNarrow: (re, im) => listener.onValue(re, im),
    });
    flanks = new FlankMeter(this.#band.wideRateHz, frequencyHz);
    this.#flanks = flanks;
    this.narrowRateHz = this.#band.narrowRateHz;
    this.delayS = this.#band.delayS;
    this.narrowBandwidthHz = this.#band.narrowBandwidthHz;
  }

  /** The strongest line within ±300 Hz of the pitch that stood through much of what was heard; null: none. */
  get steadyTone(): SteadyTone | null {
    return this.#flanks.steadyTone;
  }

  /** @param samples  mono, any length */
  push(samples: Float32Array): void {
    this.#band.push(samples);
  }

  finish(): void {
    this.#band.finish();
  }
}
