import type { FollowedPlace } from '../resonance/following/followedPlace.ts';
import type { LengthCheck } from '../resonance/lengthCheck/checkLength.ts';
import type { CheckedReport } from '../session/recording/analyseRecording.ts';
import { reportWarnings } from '../words/listening.ts';
import { resonanceReason } from '../words/resonances.ts';

/** One line of JSON for a file. The keys are a contract: see README. */
export function analysisLine(file: string, report: CheckedReport): string {
  return JSON.stringify({
    file,
    durationS: report.durationS,
    sampleRateHz: report.sampleRateHz,
    fork: report.fork,
    soundings: report.soundings.map(({ startS, endS, decayTimeS }) => ({ startS, endS, decayTimeS })),
    resonances: report.resonances.map((resonance) => ({
      timeS: resonance.timeS,
      centreS: resonance.centre?.timeS ?? null,
      riseDb: resonance.riseDb,
      confidence: resonance.confidence,
      certainty: resonance.certainty,
      ...(resonance.flaggedAtS === null ? {} : { flaggedAtS: resonance.flaggedAtS }),
      reason: resonanceReason(resonance),
    })),
    check: report.check === null ? null : checkKeys(report.check),
    ...(report.following === null ? {} : { following: report.following.map(placeKeys) }),
    warnings: reportWarnings(report),
  });
}

function checkKeys({ verdict, riseDb, standardUncertaintyDb, comparisons }: LengthCheck): object {
  return { verdict, riseDb, standardUncertaintyDb, comparisons };
}

/** `halfWidths` is null where the side can't be told, `distanceM` also where the tube isn't known. */
function placeKeys({ timeS, halfWidths, distanceM, standardUncertaintyM }: FollowedPlace): object {
  return { timeS, halfWidths, distanceM, standardUncertaintyM };
}

/** The same for a person. */
export function analysisTable(file: string, report: CheckedReport): string {
  const { fork } = report;
  const lines = [`${file}  ${report.durationS.toFixed(1)} s at ${report.sampleRateHz} Hz`];
  lines.push(
    fork.measuredHz === null
      ? `  fork ${fork.nominalHz} Hz: not heard`
      : `  fork ${fork.nominalHz} Hz: measured ${fork.measuredHz.toFixed(3)} ± ${(fork.standardUncertaintyHz ?? 0).toFixed(3)} Hz`,
  );
  for (const sounding of report.soundings) {
    const decay = sounding.decayTimeS === null ? '' : `, decay time ${sounding.decayTimeS.toFixed(0)} s`;
    lines.push(
      `  sounding   ${sounding.startS.toFixed(2)} s to ${sounding.endS === null ? 'the end' : `${sounding.endS.toFixed(2)} s`}${decay}`,
    );
  }
  for (const resonance of report.resonances) {
    const said = resonance.flaggedAtS === null ? '' : `, flagged at ${resonance.flaggedAtS.toFixed(2)} s`;
    lines.push(
      `  ${resonance.certainty === 'sure' ? 'resonance ' : 'maybe     '} ${resonance.timeS.toFixed(2)} s  ${resonanceReason(resonance)}; sure to ${(100 * resonance.confidence).toFixed(0)} %${said}`,
    );
  }
  if (report.following !== null) {
    const told = report.following.filter(({ halfWidths }) => halfWidths !== null).length;
    lines.push(
      `  followed   side told in ${told} of ${report.following.length} moments; all of them with --json`,
    );
  }
  if (report.resonances.length === 0) lines.push('  no resonance');
  if (report.check !== null) {
    const rise =
      report.check.riseDb === null
        ? ''
        : `  rise ${report.check.riseDb.toFixed(1)} ± ${(report.check.standardUncertaintyDb ?? 0).toFixed(1)} dB`;
    lines.push(`  check      ${report.check.verdict}${rise}, ${report.check.comparisons} comparisons`);
  }
  for (const { message } of reportWarnings(report)) lines.push(`  note       ${message}`);
  return `${lines.join('\n')}\n\n`;
}
