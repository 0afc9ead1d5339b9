import type { AirState } from '../air/airState.ts';
import type { GroupReason } from '../solver/likelyGroupReason.ts';
import type { OutlierCause } from '../solver/outlierCause.ts';
import type { PooledMean } from '../solver/pooledMean.ts';
import type { SolverWarning } from '../solver/solverWarning.ts';
import { groupReasonWords } from './groupReasons.ts';
import type { NameMark } from './markNames.ts';
import { counted, plural } from './en/grammar.ts';
import { fixed, roundPair, signed } from './numbers.ts';
import { outlierCauseWords } from './outlierCauses.ts';
import { solverWarningWords } from './solverWarnings.ts';

/** A group of a class, as far as it is spoken of; the classroom's rows have it all. */
export interface SpokenGroup {
  readonly group: {
    readonly source: {
      readonly numbered: 'row' | 'mark';
      readonly markNumbers: ReadonlyMap<string, number>;
      readonly stated: object | null;
    };
    readonly outcome: {
      readonly air: AirState | null;
      readonly outliers: readonly { readonly key: string; readonly cause: OutlierCause }[];
      readonly warnings: readonly SolverWarning[];
    } | null;
    readonly problems: readonly SolverWarning[];
  };
  readonly speedMps: number | null;
  readonly standardUncertaintyMps: number | null;
  readonly state: 'counted' | 'outlying' | 'repeat' | 'held' | 'left out' | 'no result';
  readonly hold: {
    readonly longestM: number | null;
    readonly warnings: readonly SolverWarning[];
    readonly isOfUnit: boolean;
  } | null;
  readonly repeat: { readonly of: string; readonly why: keyof typeof REPEATS } | null;
  readonly differenceMps: number | null;
  readonly reason: GroupReason | null;
}

/** A class, as far as it is spoken of. */
export interface SpokenClass {
  readonly rows: readonly Pick<SpokenGroup, 'state'>[];
  readonly pooled: PooledMean | null;
  readonly air: AirState | null;
  readonly withoutAir: number;
  readonly theoryMps: number | null;
}

/** The class's result in rounded sentences. */
export interface ClassWords {
  /** "343.8 ± 0.4 m/s"; null before there is one. */
  readonly speed: string | null;
  readonly sentences: readonly string[];
}

/** @param hideTheory  where a lesson keeps theory's speed back */
export function classWords(result: SpokenClass, hideTheory: boolean): ClassWords {
  const { pooled, air, withoutAir, theoryMps } = result;
  if (pooled === null) return { speed: null, sentences: ['No group has a result yet.'] };
  const pair = roundPair(pooled.value, pooled.expandedUncertainty);
  const others = result.rows.length - pooled.groups;
  const spread = pooled.betweenGroups;
  const sentences = [
    `${pooled.groups} of ${counted(result.rows.length, 'group')} counted${others === 0 ? '' : '; the others are in the table with the reason'}. The interval covers the true value in 95 of 100 classes, if the groups share no error.`,
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

/**
 * What the table says of one group.
 * @param isReferred  whether the class's speeds are referred to a common air
 * @param mayTell  whether a warning may be told: not those that give away what a lesson keeps back
 */
export function groupWords(
  row: SpokenGroup,
  nameGroup: (id: string) => string,
  isReferred: boolean,
  mayTell: (warning: SolverWarning) => boolean = () => true,
): { speed: string; remark: string } {
  const { group, speedMps, standardUncertaintyMps, state, hold, repeat, reason, differenceMps } = row;
  const { source, outcome } = group;
  const pair =
    speedMps === null || standardUncertaintyMps === null
      ? null
      : roundPair(speedMps, 2 * standardUncertaintyMps);
  const nameMark = markNamesOf(source);
  const remarks: (string | null)[] = [
    state === 'no result' ? (reasonWords(row) ?? 'no result') : null,
    state === 'outlying' && differenceMps !== null
      ? `Outlying, not counted: ${signed(differenceMps, 1)} m/s from the class. ${reasonWords(row) ?? 'There are no marks to look into.'}`
      : null,
    state === 'held' ? 'Held out until somebody has looked: tick it to count it as it is.' : null,
    hold === null || hold.longestM === null ? null : longColumnWords(hold.longestM),
    state === 'held' && reason !== null ? groupReasonWords(reason, nameMark) : null,
    repeat === null ? null : `${REPEATS[repeat.why]} “${nameGroup(repeat.of)}”.`,
    ...(outcome === null
      ? []
      : outcome.outliers.map(({ key, cause }) => `${nameMark(key)}: ${outlierCauseWords(cause)}`)),
    ...(outcome === null ? [] : solverWarningWords(toldWarnings(row).filter(mayTell), nameMark)),
    source.stated !== null && state !== 'outlying' ? 'A stated result, without marks.' : null,
    isReferred && outcome?.air === null ? 'No temperature noted: taken as it is.' : null,
  ];
  return {
    speed: pair === null ? '—' : `${pair.value} ± ${pair.uncertainty}`,
    remark: remarks.filter((remark) => remark !== null).join(' '),
  };
}

/** Why a group is outlying, held out or without a result; null where it is none, or its marks don't show it. */
export function reasonWords({
  group,
  reason,
  state,
  hold,
}: Pick<SpokenGroup, 'group' | 'reason' | 'state' | 'hold'>): string | null {
  const nameMark = markNamesOf(group.source);
  if (reason !== null) return groupReasonWords(reason, nameMark);
  if (state !== 'held' || hold === null) {
    return group.problems.length === 0 ? null : solverWarningWords(group.problems, nameMark).join(' ');
  }
  const long = hold.longestM === null ? [] : [longColumnWords(hold.longestM)];
  return [...long, ...solverWarningWords(toldWarnings({ group, reason, state, hold }), nameMark)].join(' ');
}

/** A group's warnings, less those that only follow from what is said of it already: a wrong unit upsets everything. */
function toldWarnings({
  group,
  reason,
  state,
  hold,
}: Pick<SpokenGroup, 'group' | 'reason' | 'state' | 'hold'>): readonly SolverWarning[] {
  if (state === 'held' && reason !== null) return [];
  const warnings = group.outcome?.warnings ?? [];
  if (hold === null || !hold.isOfUnit) return warnings;
  const ofUnit = hold.warnings.filter(({ code }) => code === 'length-unit' || code === 'other-explanation');
  const plainest = ofUnit.find(({ code }) => code === 'length-unit') ?? ofUnit.at(0);
  return plainest === undefined ? [] : [plainest];
}

function longColumnWords(longestM: number): string {
  return `A column of ${fixed(longestM, 2)} m is longer than school tubes are: millimetres typed for centimetres?`;
}

/** How the groups' results become one, as the class's file says it. */
export const POOLING_METHOD =
  'random-effects mean (Paule & Mandel 1982), interval after Hartung & Knapp 2001';

/** A group that a table of results doesn't name. @param table  the file's name without its ending */
export function unnamedGroupWords(table: string, row: number): string {
  return `${table}, row ${row}`;
}

/** What a class may talk about with these results before it, outlying groups named kindly. */
export function discussionWords(result: {
  readonly rows: readonly (Pick<SpokenGroup, 'state'> & {
    readonly group: {
      readonly source: { readonly name: string };
      readonly outcome: { readonly air: AirState | null } | null;
    };
  })[];
  readonly pooled: PooledMean | null;
}): readonly string[] {
  const { rows, pooled } = result;
  if (pooled === null) return [];
  const outlying = rows.filter(({ state }) => state === 'outlying').map(({ group }) => group.source.name);
  const degrees = rows.flatMap(({ group }) => group.outcome?.air?.temperatureC ?? []);
  const [coldest, warmest] = [Math.min(...degrees), Math.max(...degrees)];
  return [
    pooled.betweenGroups > 0
      ? 'The groups spread more than each of them thought. What did nobody put into the uncertainty?'
      : 'The groups agree within their uncertainties. What could all of them have wrong together?',
    ...(outlying.length === 0
      ? []
      : [
          `${outlying.slice(0, 5).join(', ')}${outlying.length > 5 ? ' and others' : ''} found something that the others can learn from: what in the setup would give just this difference?`,
        ]),
    ...(warmest - coldest >= 2
      ? [
          `The air was from ${fixed(coldest, 1)} to ${fixed(warmest, 1)} °C. Plot the speeds over it: how many m/s a degree do you find, and are the groups’ uncertainties small enough to see it?`,
        ]
      : []),
    'How would the mean change if the class had measured twice as many groups, and how would its uncertainty?',
  ];
}

/** What the picture of the class's spread shows, for those who don't see it. */
export function spreadWords({ rows, pooled }: Pick<SpokenClass, 'rows' | 'pooled'>): string {
  const outlying = rows.filter(({ state }) => state === 'outlying').length;
  if (pooled === null) return 'No group has a result yet.';
  return `${rows.length} groups from the slowest to the fastest with their 95 % intervals; the band is the class’s ${fixed(pooled.value, 1)} ± ${fixed(pooled.expandedUncertainty, 1)} m/s. ${outlying} outlying ${plural(outlying, 'group is a cross', 'groups are crosses')}, what isn’t counted is hollow.${outlying === 0 ? '' : ' A group beyond the edge stands there with its speed.'}`;
}

const REPEATS = {
  'same marks': 'The same marks as',
  'earlier state of the same experiment': 'An earlier state of',
  'same group again': 'The same group as',
} as const;

/** "Row 3" of a table, "Mark 3" of an experiment. */
function markNamesOf({ numbered, markNumbers }: SpokenGroup['group']['source']): NameMark {
  const noun = numbered === 'row' ? 'Row' : 'Mark';
  return (key) => `${noun} ${markNumbers.get(key) ?? key}`;
}
