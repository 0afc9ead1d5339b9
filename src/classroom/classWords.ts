import { fixed, roundPair, signed } from '../report/rounding.ts';
import type { ClassResult, ClassRow } from './classResult.ts';

/** The class's result in rounded sentences. */
export interface ClassWords {
  /** "343.8 ± 0.4 m/s"; null before there is one. */
  readonly speed: string | null;
  readonly sentences: readonly string[];
}

/** @param hideTheory  where a lesson keeps theory's speed back */
export function classWords(result: ClassResult, hideTheory: boolean): ClassWords {
  const { pooled, air, withoutAir, theoryMps } = result;
  if (pooled === null) return { speed: null, sentences: ['No group has a result yet.'] };
  const pair = roundPair(pooled.value, pooled.expandedUncertainty);
  const others = result.rows.length - pooled.groups;
  const spread = pooled.betweenGroups;
  const sentences = [
    `${pooled.groups} of ${result.rows.length} ${result.rows.length === 1 ? 'group' : 'groups'} counted${others === 0 ? '' : '; the others are in the table with the reason'}. The interval covers the true value in 95 of 100 classes, if the groups share no error.`,
    spread > 0
      ? `Beyond their own uncertainties the groups spread by ${fixed(spread, spread < 1 ? 2 : 1)} m/s (standard deviation): errors that single groups don’t see.`
      : 'The groups differ by no more than their own uncertainties explain.',
    air === null
      ? 'No group noted a temperature: the speeds are taken as they are.'
      : `All speeds are referred to ${fixed(air.temperatureC, 1)} °C by theory’s ratio.${withoutAir === 0 ? '' : ` ${withoutAir} without a temperature: taken as they are.`}`,
    theoryMps === null || hideTheory
      ? null
      : `Theory for this air: ${fixed(theoryMps, 1)} m/s; the class is ${signed(pooled.value - theoryMps, 1)} m/s from it.`,
    'Errors that all groups share, such as rules of one make, do not average out and are not in the uncertainty.',
    'Method: random-effects mean, Paule & Mandel 1982; interval after Hartung & Knapp 2001.',
  ].filter((sentence) => sentence !== null);
  return { speed: `${pair.value} ± ${pair.uncertainty} m/s`, sentences };
}

/** What the table says of one group. @param isReferred  whether the class's speeds are referred to a common air */
export function groupWords(
  row: ClassRow,
  nameOf: (id: string) => string,
  isReferred: boolean,
): { speed: string; remark: string } {
  const { group, speedMps, standardUncertaintyMps, state, repeat, differenceMps, reason } = row;
  const pair =
    speedMps === null || standardUncertaintyMps === null
      ? null
      : roundPair(speedMps, 2 * standardUncertaintyMps);
  const remarks: (string | null)[] = [
    state === 'no result' ? (group.problem ?? 'no result') : null,
    state === 'outlying'
      ? `Outlying, not counted: ${signed(differenceMps ?? 0, 1)} m/s from the class. ${reason ?? 'There are no marks to look into.'}`
      : null,
    repeat === null ? null : `${REPEAT_WORDS[repeat.why]} “${nameOf(repeat.of)}”.`,
    ...(group.outcome?.causes ?? []),
    group.source.stated !== null && state !== 'outlying' ? 'A stated result, without marks.' : null,
    isReferred && group.outcome?.air === null ? 'No temperature noted: taken as it is.' : null,
  ];
  return {
    speed: pair === null ? '—' : `${pair.value} ± ${pair.uncertainty}`,
    remark: remarks.filter((remark) => remark !== null).join(' '),
  };
}

const REPEAT_WORDS = {
  'same marks': 'The same marks as',
  'earlier state of the same experiment': 'An earlier state of',
  'same group again': 'The same group as',
} as const;
