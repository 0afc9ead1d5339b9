import type { SampleBlock } from '../capture/soundSource.ts';
import { checkLength } from '../resonance/checkLength.ts';
import type { LengthCheck } from '../resonance/checkLength.ts';
import { Listening } from './listening.ts';
import type { ForkPitch, ListeningReport } from './listeningTypes.ts';

/** What is asked of a recording. */
export interface AnalysisOptions {
  readonly sampleRateHz: number;
  readonly fork: ForkPitch;
  /** Report what the live detector flags, each with `flaggedAtS`, instead of the second look's resonances. */
  readonly live?: boolean;
  /** Also judge whether the fixed column is at resonance. */
  readonly check?: boolean;
}

/** A report with the answer to "is this length at resonance?" where it was asked. */
export interface CheckedReport extends ListeningReport {
  readonly check: LengthCheck | null;
}

const BLOCK = 4096;

/**
 * The stages over a whole recording that is in memory.
 * @param samples  mono, any length
 * @throws RangeError when the fork's pitch doesn't fit the sample rate
 */
export function analyseRecording(samples: Float32Array, options: AnalysisOptions): CheckedReport {
  const analysis = new RecordingAnalysis(options);
  for (let start = 0; start < samples.length; start += BLOCK) {
    analysis.push({
      samples: samples.subarray(start, start + BLOCK),
      startFrame: start,
      discontinuity: false,
    });
  }
  return analysis.finish();
}

/** The same, block by block, for recordings that are read piece by piece. */
export class RecordingAnalysis {
  readonly #listening: Listening;
  readonly #options: AnalysisOptions;

  /** @throws RangeError when the fork's pitch doesn't fit the sample rate */
  constructor(options: AnalysisOptions) {
    this.#options = options;
    this.#listening = new Listening({ sampleRateHz: options.sampleRateHz, fork: options.fork });
  }

  push(block: SampleBlock): void {
    this.#listening.push(block);
  }

  finish(): CheckedReport {
    this.#listening.finish();
    const found = this.#listening.secondLook();
    const check =
      this.#options.check === true
        ? checkLength(this.#listening.series, this.#options.fork.toleranceHz)
        : null;
    const report = { ...found, check };
    if (this.#options.live !== true) return report;
    const resonances = [...this.#listening.resonances].sort((a, b) => a.timeS - b.timeS);
    return { ...report, resonances };
  }
}
