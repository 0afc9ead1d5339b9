import type { AirState } from '../air/airState.ts';
import { speedOfSound } from '../air/speedOfSound.ts';
import { likelyGroupReason } from '../solver/likelyGroupReason.ts';
import type { GroupReason } from '../solver/likelyGroupReason.ts';
import { pooledMean } from '../solver/pooledMean.ts';
import type { PooledMean } from '../solver/pooledMean.ts';
import type { ClassGroup } from './classGroup.ts';
import { findRepeats } from './findRepeats.ts';
import type { Repeat } from './findRepeats.ts';
import { groupHold } from './groupHold.ts';
import type { GroupHold } from './groupHold.ts';

/** A group as the class sees it. */
export interface ClassRow {
  readonly group: ClassGroup;
  /** At the class's common temperature and humidity; null without a result. */
  readonly speedMps: number | null;
  readonly standardUncertaintyMps: number | null;
  readonly state: 'counted' | 'outlying' | 'repeat' | 'held' | 'left out' | 'no result';
  readonly repeat: Repeat | null;
  /** Why its own numbers hold it out until somebody counts it; null where they don't. */
  readonly hold: GroupHold | null;
  /** Group's speed minus the class's; null without a result. */
  readonly differenceMps: number | null;
  /** Why it is outlying or held out, as far as its marks show it. */
  readonly reason: GroupReason | null;
}

/** The whole class. */
export interface ClassResult {
  readonly rows: readonly ClassRow[];
  readonly pooled: PooledMean | null;
  /** Air to which the speeds are referred by theory's ratio; null where no group noted a temperature. */
  readonly air: AirState | null;
  /** Counted groups that noted no temperature, while others did: their speeds are taken as they are. */
  readonly withoutAir: number;
  readonly theoryMps: number | null;
  /** Of the counted and the outlying groups; null where their air differs too little to show what it does. */
  readonly temperatures: TemperatureSpan | null;
}

/** The coldest and the warmest air of a class. */
export interface TemperatureSpan {
  readonly coldestC: number;
  readonly warmestC: number;
}

/** Groups whose air differs by less show nothing of temperature, °C; 2 °C are 1.2 m/s. */
const LEAST_SPREAD_C = 2;

/**
 * Pools a class. Repeats, groups that their own numbers hold out and those that the teacher left out don't count. The
 * others' speeds are referred to the mean air of the groups by theory's ratio; then a random-effects mean is taken (see
 * `pooledMean`), which also names the outlying groups.
 */
export function classResult(groups: readonly ClassGroup[]): ClassResult {
  const repeats = findRepeats(groups);
  const holds = new Map(groups.map((group) => [group.id, groupHold(group)]));
  const isIn = ({ id, outcome, isChosen }: ClassGroup): boolean =>
    outcome !== null && (isChosen ?? (!repeats.has(id) && holds.get(id) === null));
  const air = meanAir(groups.filter(isIn));
  const theoryMps = air === null ? null : speedOfSound(air).speedMps;
  const referred = new Map(
    groups.flatMap(
      (group): [string, { speedMps: number; standardUncertaintyMps: number; ratio: number }][] => {
        const { outcome } = group;
        if (outcome === null) return [];
        const ratio =
          theoryMps === null || outcome.air === null ? 1 : theoryMps / speedOfSound(outcome.air).speedMps;
        const scaled = {
          speedMps: outcome.speedMps * ratio,
          standardUncertaintyMps: outcome.standardUncertaintyMps * ratio,
        };
        return [[group.id, { ...scaled, ratio }]];
      },
    ),
  );
  const pooled = pooledMean(
    groups.filter(isIn).flatMap(({ id }) => {
      const own = referred.get(id);
      return own === undefined
        ? []
        : [{ name: id, value: own.speedMps, standardUncertainty: own.standardUncertaintyMps }];
    }),
  );
  const outlying = new Set(pooled?.outlying);
  const forksHz = [...new Set(groups.flatMap(({ source }) => source.marks.map((mark) => mark.frequencyHz)))];
  const rows = groups.map((group): ClassRow => {
    const own = referred.get(group.id) ?? null;
    const repeat = repeats.get(group.id) ?? null;
    const hold = holds.get(group.id) ?? null;
    const isOut = outlying.has(group.id);
    const state =
      own === null
        ? 'no result'
        : isOut
          ? 'outlying'
          : isIn(group)
            ? 'counted'
            : repeat !== null && group.isChosen === null
              ? 'repeat'
              : hold !== null && group.isChosen === null
                ? 'held'
                : 'left out';
    const isLookedInto = isOut || (state === 'held' && hold?.isOfUnit === false);
    const reason =
      !isLookedInto || own === null || pooled === null || group.source.marks.length === 0
        ? null
        : likelyGroupReason(group.source.marks, pooled.value / own.ratio, forksHz);
    return {
      group,
      speedMps: own?.speedMps ?? null,
      standardUncertaintyMps: own?.standardUncertaintyMps ?? null,
      state,
      repeat,
      hold,
      differenceMps: own === null || pooled === null ? null : own.speedMps - pooled.value,
      // Of a held group its own warnings say more, but where the rule's zero lies only the class's speed can tell.
      reason: isOut || reason?.code === 'shifted-zero' ? reason : null,
    };
  });
  const counted = rows.filter(({ state }) => state === 'counted');
  return {
    rows,
    pooled,
    air,
    withoutAir: air === null ? 0 : counted.filter(({ group }) => group.outcome?.air === null).length,
    theoryMps,
    temperatures: temperatureSpan(rows),
  };
}

/** Whether a group's speed is shown over its temperature: what is wrong with one that was left out would hide it. */
export function isShownByTemperature({ state }: Pick<ClassRow, 'state'>): boolean {
  return state === 'counted' || state === 'outlying';
}

function temperatureSpan(rows: readonly ClassRow[]): TemperatureSpan | null {
  const degreesC = rows
    .filter(isShownByTemperature)
    .flatMap(({ group: { outcome } }) => outcome?.air?.temperatureC ?? []);
  const [coldestC, warmestC] = [Math.min(...degreesC), Math.max(...degreesC)];
  return warmestC - coldestC >= LEAST_SPREAD_C ? { coldestC, warmestC } : null;
}

/** The mean of the groups' air, uncertainties as those of one thermometer: all may share its error. */
function meanAir(groups: readonly ClassGroup[]): AirState | null {
  const airs = groups.flatMap(({ outcome }) =>
    outcome === null || outcome.air === null ? [] : [outcome.air],
  );
  const first = airs.at(0);
  if (first === undefined) return null;
  const mean = (of: (air: AirState) => number): number =>
    airs.reduce((sum, air) => sum + of(air), 0) / airs.length;
  return {
    ...first,
    temperatureC: mean((air) => air.temperatureC),
    humidityPct: mean((air) => air.humidityPct),
    pressurePa: mean((air) => air.pressurePa),
  };
}
