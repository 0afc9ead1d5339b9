import type { ListeningReport } from '../../../src/session/listeningTypes.ts';
import type { Flag } from './score.ts';

/** What the bench made of a recording. */
export interface Heard {
  readonly flags: readonly Flag[];
  readonly frequencyHz: number | null;
  readonly frequencyUncertaintyHz: number | null;
  readonly verdict: string | null;
  readonly riseDb: number | null;
  readonly warnings: readonly string[];
  /** Time that it took, s. */
  readonly workS: number;
}

/** A stamp's tolerance: 0.5 % or 1 Hz, whichever is more (from memory; 1 Hz is common practice). */
export function stampToleranceHz(nominalHz: number): number {
  return Math.max(1, 0.005 * nominalHz);
}

/** The bench's one entry point. */
type Analyse = (
  samples: Float32Array,
  options: {
    sampleRateHz: number;
    fork: { nominalHz: number; toleranceHz: number };
    live?: boolean;
    check?: boolean;
  },
) => ListeningReport & {
  readonly check?: { readonly verdict: string; readonly riseDb: number | null } | null;
};

let analyse: Analyse | null = null;

/** Runs the bench's own stages over samples, live or as a finished recording. */
export async function listenTo(
  samples: Float32Array,
  sampleRateHz: number,
  nominalHz: number,
  how: { live?: boolean; check?: boolean },
): Promise<Heard> {
  // Loaded when first needed, so that the competitors can be measured without the bench.
  const path = '../../../src/session/analyseRecording.ts';
  analyse ??= ((await import(path)) as { analyseRecording: Analyse }).analyseRecording;
  const start = performance.now();
  const report = analyse(samples, {
    sampleRateHz,
    fork: { nominalHz, toleranceHz: stampToleranceHz(nominalHz) },
    ...how,
  });
  return {
    flags: report.resonances.map(({ timeS, flaggedAtS }) => ({ timeS, flaggedAtS })),
    frequencyHz: report.fork.measuredHz,
    frequencyUncertaintyHz: report.fork.standardUncertaintyHz,
    verdict: report.check?.verdict ?? null,
    riseDb: report.check?.riseDb ?? null,
    warnings: report.warnings.map((warning) => warning.code),
    workS: (performance.now() - start) / 1000,
  };
}
