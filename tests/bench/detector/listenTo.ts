import { analyseRecording } from '../../../src/session/recording/analyseRecording.ts';
import { defaultToleranceHz } from '../../../src/session/hearing/forkTolerance.ts';
import type { Certainty } from '../../../src/resonance/passages/passageProbability.ts';
import type { Flag } from './score.ts';

/** A flag with what it says of itself. */
export interface HeardFlag extends Flag {
  readonly certainty: Certainty;
  readonly probability: number;
}

/** What the bench made of a recording. */
export interface Heard {
  readonly flags: readonly HeardFlag[];
  readonly frequencyHz: number | null;
  readonly frequencyUncertaintyHz: number | null;
  readonly verdict: string | null;
  readonly riseDb: number | null;
  readonly warnings: readonly string[];
  /** Time that it took, s. */
  readonly workS: number;
}

/** Runs the bench's own stages over samples, live or as a finished recording. */
export function listenTo(
  samples: Float32Array,
  sampleRateHz: number,
  nominalHz: number,
  how: { live?: boolean; check?: boolean },
): Heard {
  const start = performance.now();
  const report = analyseRecording(samples, {
    sampleRateHz,
    fork: { nominalHz, toleranceHz: defaultToleranceHz(nominalHz) },
    ...how,
  });
  return {
    flags: report.resonances.map(({ timeS, flaggedAtS, certainty, confidence }) => ({
      timeS,
      flaggedAtS,
      certainty,
      probability: confidence,
    })),
    frequencyHz: report.fork.measuredHz,
    frequencyUncertaintyHz: report.fork.standardUncertaintyHz,
    verdict: report.check?.verdict ?? null,
    riseDb: report.check?.riseDb ?? null,
    warnings: report.warnings.map((warning) => warning.code),
    workS: (performance.now() - start) / 1000,
  };
}
