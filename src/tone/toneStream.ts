import { FlankMeter } from './sideBandMeter.ts';
import { ForkBand } from './demodulator.ts';
import type { StreamPart } from './demodulator.ts';
import type { SteadyTone } from './steadyTone.ts';
import { ToneSeries } from './toneSeries.ts';

/** Samples in; complex tone values (about 100 a second) and flank noise (about 12 a second) out. */
export class ToneStream {
  /** Everything so far. */
  readonly series: ToneSeries;
  /** How long after a moment its value comes out, s. */
  readonly delayS: number;
  readonly #band: ForkBand;
  readonly #flanks: FlankMeter;

  /** @throws RangeError when the pitch doesn't fit the sample rate */
  constructor(sampleRateHz: number, frequencyHz: number) {
    // The band first: it checks the pitch against the rate.
    this.#band = new ForkBand(sampleRateHz, frequencyHz);
    const { wideRateHz, narrowRateHz, narrowBandwidthHz, delayS } = this.#band;
    this.#flanks = new FlankMeter(wideRateHz, frequencyHz);
    this.series = new ToneSeries(narrowRateHz, narrowBandwidthHz);
    this.delayS = delayS;
  }

  /** The strongest line within ±300 Hz of the pitch that stood through much of what was heard; null: none. */
  get steadyTone(): SteadyTone | null {
    return this.#flanks.steadyTone;
  }

  /** @param samples  mono, any length */
  push(samples: Float32Array): void {
    this.#band.push(samples, this.#take);
  }

  finish(): void {
    this.#band.finish(this.#take);
  }

  readonly #take = (wide: StreamPart, narrow: StreamPart): void => {
    this.#flanks.push(wide, this.series.flanks);
    this.series.pushValues(narrow.re, narrow.im, narrow.count);
  };
}
