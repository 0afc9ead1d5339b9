import { FREQUENCY_FROM_S } from '../../resonance/frequencyFrom.ts';
import { combineFrequencies } from '../../resonance/soundingFrequency.ts';
import type { ListeningReport, ListeningWarning, Resonance, Sounding } from '../hearing/listeningTypes.ts';

/** What one listening of several heard of a recording. All times are on the recording's axis. */
export interface PartReport {
  readonly report: ListeningReport;
  /** When it began to hear, s. */
  readonly fromS: number;
  /** When the next took over, s; Infinity for the last one. */
  readonly untilS: number;
}

/** What only holds of the whole if it holds of every part. */
const OF_ALL_PARTS: readonly ListeningWarning['code'][] = ['no-fork-heard', 'silent', 'too-faint'];

/**
 * One report of parts that follow each other, each of which also heard the end of the one before.
 * @param parts  at least one, in order
 */
export function joinReports(parts: readonly PartReport[]): ListeningReport {
  const [first] = parts;
  if (first === undefined) throw new RangeError('parts must not be empty');
  if (parts.length === 1) return first.report;
  const last = parts.at(-1) as PartReport;
  const soundings: Sounding[] = [];
  const resonances: Resonance[] = [];
  let sinceS = -Infinity;
  for (const { report, untilS } of parts) {
    const numbers = addSoundings(soundings, report.soundings, sinceS, untilS);
    for (const resonance of report.resonances) {
      if (resonance.timeS < sinceS || resonance.timeS >= untilS) continue;
      const soundingIndex = numbers.get(resonance.soundingIndex) ?? null;
      resonances.push({ ...resonance, soundingIndex });
    }
    sinceS = untilS;
  }
  return {
    durationS: last.fromS + last.report.durationS,
    sampleRateHz: first.report.sampleRateHz,
    fork: forkOf(parts, soundings),
    soundings,
    resonances,
    warnings: joinWarnings(parts),
  };
}

/**
 * Adds what a part has of its own. A sounding that was cut in two becomes one again.
 * @param sinceS  where the part before ends
 * @returns each sounding's number in the whole by its number in the part
 */
function addSoundings(
  all: Sounding[],
  own: readonly Sounding[],
  sinceS: number,
  untilS: number,
): Map<number | null, number> {
  const numbers = new Map<number | null, number>();
  for (const sounding of own) {
    const endS = sounding.endS ?? Infinity;
    if (sounding.startS >= untilS) continue;
    const last = all.at(-1);
    const isSame =
      last !== undefined && sounding.startS < sinceS && sounding.startS < (last.endS ?? Infinity);
    if (isSame && endS > sinceS) all[all.length - 1] = { ...last, endS: sounding.endS };
    else if (endS > sinceS) all.push({ ...sounding, index: all.length + 1 });
    if (endS > sinceS) numbers.set(sounding.index, all.length);
  }
  return numbers;
}

/** The fork's frequency over all soundings that are long enough to tell it; else that of the first part that heard it. */
function forkOf(parts: readonly PartReport[], soundings: readonly Sounding[]): ListeningReport['fork'] {
  const { nominalHz } = parts[0].report.fork;
  const frequencies = soundings.flatMap(({ startS, endS, frequencyHz, frequencyStandardUncertaintyHz: u }) =>
    frequencyHz === null || u === null || (endS ?? Infinity) - startS < FREQUENCY_FROM_S
      ? []
      : [{ offsetHz: frequencyHz - nominalHz, standardUncertaintyHz: u }],
  );
  const frequency = combineFrequencies(frequencies);
  if (frequency !== null) {
    const { offsetHz, standardUncertaintyHz } = frequency;
    return { nominalHz, measuredHz: nominalHz + offsetHz, standardUncertaintyHz };
  }
  const heard = parts.find(({ report }) => report.fork.measuredHz !== null);
  return heard?.report.fork ?? { nominalHz, measuredHz: null, standardUncertaintyHz: null };
}

/** What is the same in all parts once; what changes from part to part, such as how often, with the stretch that it holds of. */
function joinWarnings(parts: readonly PartReport[]): ListeningWarning[] {
  const joined: ListeningWarning[] = [];
  const codes = new Set(parts.flatMap(({ report }) => report.warnings.map(({ code }) => code)));
  for (const code of codes) {
    const found = parts.flatMap((part) =>
      part.report.warnings.filter((warning) => warning.code === code).map((warning) => ({ part, warning })),
    );
    const isOfAll = found.length === parts.length;
    const [first] = found;
    if (first === undefined || (!isOfAll && OF_ALL_PARTS.includes(code))) continue;
    const isSame = found.every(({ warning }) => JSON.stringify(warning) === JSON.stringify(first.warning));
    if (isOfAll && isSame) {
      joined.push(first.warning);
      continue;
    }
    for (const { part, warning } of found) {
      const stretch = { fromS: part.fromS, toS: part.fromS + part.report.durationS };
      joined.push({ ...warning, stretch });
    }
  }
  return joined;
}
