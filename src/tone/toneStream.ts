import { QuadratureDemodulator } from './demodulator.ts';
import type { LentValues } from './demodulator.ts';
import { SideBandMeter } from './sideBandMeter.ts';
import type { SteadyTone } from './steadyTone.ts';
import { ToneSeries } from './toneSeries.ts';

/** Samples in; complex tone values (about 100 a second) and the noise in the side bands (about 12 a second) out. */
export class ToneStream {
  /** Everything so far. */
  readonly series: ToneSeries;
  /** How long after a moment its value comes out, s. */
  readonly delayS: number;
  private readonly demodulator: QuadratureDemodulator;
  private readonly sideBands: SideBandMeter;

  /** @throws RangeError when the frequency doesn't fit the sample rate */
  constructor(sampleRateHz: number, frequencyHz: number) {
    // The demodulator first: it checks the frequency against the rate.
    this.demodulator = new QuadratureDemodulator(sampleRateHz, frequencyHz);
    const { wideRateHz, narrowRateHz, narrowBandwidthHz, delayS } = this.demodulator;
    this.sideBands = new SideBandMeter(wideRateHz, frequencyHz);
    this.series = new ToneSeries(narrowRateHz, narrowBandwidthHz);
    this.delayS = delayS;
  }

  /** The strongest line within ±300 Hz of the fork's frequency that stood through much of what was heard; null: none. */
  get steadyTone(): SteadyTone | null {
    return this.sideBands.steadyTone;
  }

  /** @param samples  mono, any length */
  push(samples: Float32Array): void {
    this.demodulator.push(samples, this.take);
  }

  finish(): void {
    this.demodulator.finish(this.take);
  }

  private readonly take = (wide: LentValues, narrow: LentValues): void => {
    this.sideBands.push(wide, this.series.sideBands);
    this.series.pushValues(narrow.re, narrow.im, narrow.count);
  };
}
