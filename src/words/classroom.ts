import type { AirState } from '../air/airState.ts';
import type { GroupReason } from '../solver/likelyGroupReason.ts';
import type { OutlierCause } from '../solver/outlierCause.ts';
import type { PooledMean } from '../solver/pooledMean.ts';
import type { SolverWarning } from '../solver/solverWarning.ts';
import type { LaterWords } from './catalogue.ts';
import { groupReasonWords } from './groupReasons.ts';
import { laterWords } from './inUse.ts';
import { listed } from './lists.ts';
import type { NameMark } from './markNames.ts';
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
  readonly repeat: { readonly of: string; readonly why: keyof LaterWords['sameGroup'] } | null;
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

/** Of the outlying groups so many are named. */
const MOST_NAMED = 5;

/** The class's result in rounded sentences. */
export interface ClassWords {
  /** "343.8 ± 0.4 m/s"; null before there is one. */
  readonly speed: string | null;
  readonly sentences: readonly string[];
}

/** @param hideTheory  where a lesson keeps theory's speed back */
export function classWords(result: SpokenClass, hideTheory: boolean): ClassWords {
  const said = laterWords.classResult;
  const { pooled, air, withoutAir, theoryMps } = result;
  if (pooled === null) return { speed: null, sentences: [said.none] };
  const pair = roundPair(pooled.value, pooled.expandedUncertainty);
  const all = result.rows.length;
  const spread = pooled.betweenGroups;
  const counted = [
    said.counted(pooled.groups, all),
    ...(pooled.groups === all ? [] : [said.others]),
    said.interval,
  ];
  const airs =
    air === null
      ? [said.noAir]
      : [
          said.referred(fixed(air.temperatureC, 1)),
          ...(withoutAir === 0 ? [] : [said.withoutAir(withoutAir)]),
        ];
  const sentences = [
    counted.join(' '),
    spread > 0 ? said.spread(fixed(spread, spread < 1 ? 2 : 1)) : said.noSpread,
    airs.join(' '),
    ...(theoryMps === null || hideTheory
      ? []
      : [said.theory(fixed(theoryMps, 1), signed(pooled.value - theoryMps, 1))]),
    said.shared,
    said.method,
  ];
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
  const said = laterWords.classGroup;
  const { group, speedMps, standardUncertaintyMps, state, hold, repeat, reason, differenceMps } = row;
  const { source, outcome } = group;
  const pair =
    speedMps === null || standardUncertaintyMps === null
      ? null
      : roundPair(speedMps, 2 * standardUncertaintyMps);
  const nameMark = markNamesOf(source);
  const remarks: (string | null)[] = [
    state === 'no result' ? (reasonWords(row) ?? said.noResult) : null,
    ...(state === 'outlying' && differenceMps !== null
      ? [said.outlier(signed(differenceMps, 1)), reasonWords(row) ?? said.noReason]
      : []),
    state === 'held' ? said.held : null,
    hold === null || hold.longestM === null ? null : longColumnWords(hold.longestM),
    state === 'held' && reason !== null ? groupReasonWords(reason, nameMark) : null,
    repeat === null ? null : laterWords.sameGroup[repeat.why](nameGroup(repeat.of)),
    ...(outcome === null
      ? []
      : outcome.outliers.map(({ key, cause }) => said.markCause(nameMark(key), outlierCauseWords(cause)))),
    ...(outcome === null ? [] : solverWarningWords(toldWarnings(row).filter(mayTell), nameMark)),
    source.stated !== null && state !== 'outlying' ? said.resultAlone : null,
    isReferred && outcome?.air === null ? said.noAir : null,
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
  return laterWords.classGroup.longColumn(fixed(longestM, 2));
}

/** How the groups' results become one, as the class's file says it, in English as its keys. */
export const POOLING_METHOD =
  'random-effects mean (Paule & Mandel 1982), interval after Hartung & Knapp 2001';

/** A group that a table of results doesn't name. @param table  the file's name without its ending */
export function unnamedGroupWords(table: string, row: number): string {
  return laterWords.classGroup.unnamed(table, row);
}

/** What a class may talk about with these results before it, outlying groups named kindly. */
export function discussionWords(result: {
  readonly rows: readonly (Pick<SpokenGroup, 'state'> & {
    readonly group: {
      readonly source: { readonly name: string };
    };
  })[];
  readonly pooled: PooledMean | null;
  readonly temperatures: { readonly coldestC: number; readonly warmestC: number } | null;
}): readonly string[] {
  const said = laterWords.classDiscussion;
  const { rows, pooled, temperatures } = result;
  if (pooled === null) return [];
  const outlying = rows.filter(({ state }) => state === 'outlying').map(({ group }) => group.source.name);
  const more = outlying.length - MOST_NAMED;
  const named = [...outlying.slice(0, MOST_NAMED), ...(more > 0 ? [said.others(more)] : [])];
  return [
    pooled.betweenGroups > 0 ? said.spread : said.agree,
    ...(outlying.length === 0 ? [] : [said.apart(listed(named))]),
    ...(temperatures === null
      ? []
      : [said.temperatures(fixed(temperatures.coldestC, 1), fixed(temperatures.warmestC, 1))]),
    said.moreGroups,
  ];
}

/** The speed of a group beyond the picture's edge. */
export function speedLabel(speedMps: number): string {
  return fixed(speedMps, 0);
}

/** What the picture of the class's spread shows, for those who don't see it. */
export function spreadWords({ rows, pooled }: Pick<SpokenClass, 'rows' | 'pooled'>): string {
  const said = laterWords.spreadPicture;
  if (pooled === null) return laterWords.classResult.none;
  const shown = rows.filter(({ state }) => state !== 'no result').length;
  const outlying = rows.filter(({ state }) => state === 'outlying').length;
  return [
    said.shows(shown, fixed(pooled.value, 1), fixed(pooled.expandedUncertainty, 1)),
    ...(outlying === 0 ? [] : [said.outliers(outlying), said.beyond]),
  ].join(' ');
}

/** "Row 3" of a table, "Mark 3" of an experiment. */
function markNamesOf({ numbered, markNumbers }: SpokenGroup['group']['source']): NameMark {
  return (key) => laterWords.classGroup[numbered](String(markNumbers.get(key) ?? key));
}
