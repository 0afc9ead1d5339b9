import type { SecondLook } from '../resonance/secondLook.ts';
import type { ForkPitch, ListeningReport, ListeningWarning } from './listeningTypes.ts';

/** Warnings that a finished listening gives rise to, apart from the samples' own faults. */
export function listeningWarnings(
  report: Omit<ListeningReport, 'warnings'>,
  fork: ForkPitch,
  _look: SecondLook,
): ListeningWarning[] {
  const warnings: ListeningWarning[] = [];
  const add = (code: ListeningWarning['code'], message: string, timeS: number | null = null): void => {
    warnings.push({ code, message, timeS });
  };
  if (report.durationS < 1) {
    add(
      'too-short',
      'The recording is shorter than a second: too short to find a fork in it. Record a whole slide.',
    );
  } else if (report.fork.measuredHz === null) {
    add(
      'no-fork-heard',
      `No steady tone within ${fork.toleranceHz.toFixed(1)} Hz of ${fork.nominalHz} Hz was heard: check the fork's stamp, strike harder or hold the fork nearer to the microphone.`,
    );
  } else {
    const off = report.fork.measuredHz - fork.nominalHz;
    const limit = Math.max(1, 0.0025 * fork.nominalHz);
    if (Math.abs(off) > limit + 2 * (report.fork.standardUncertaintyHz ?? 0)) {
      add(
        'off-stamp',
        `The fork sounds at ${report.fork.measuredHz.toFixed(2)} Hz, ${Math.abs(off).toFixed(2)} Hz ${off > 0 ? 'above' : 'below'} its stamp: use the measured pitch, and check the fork for nicks.`,
      );
    }
  }
  return warnings;
}
