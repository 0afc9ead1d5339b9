import { moistAir } from '../../support/column/columnGas.ts';
import type { ColumnGas } from '../../support/column/columnGas.ts';
import type { Resonance, TestColumn } from '../../support/column/independentColumn.ts';
import type { Random } from './random.ts';

/** One row as somebody would write it; null where a cell stays empty. */
export interface WrittenRow {
  readonly forkHz: number;
  readonly ends: 'closed' | 'open';
  readonly lengthCm: number;
  readonly diameterMm: number | null;
  readonly temperatureC: number | null;
  readonly humidityPct: number | null;
  readonly order: number | null;
  readonly lengthUncertaintyMm: number | null;
  readonly forkUncertaintyHz: number | null;
  /** '' where it was by ear. */
  readonly locatedBy: 'centre' | '';
}

/** A made-up experiment, with what nobody at the bench knows. */
export interface WorldTable {
  readonly rows: readonly WrittenRow[];
  readonly trueOrders: readonly number[];
  /** Free air, or whatever gas is in the tube. */
  readonly trueSpeedMps: number;
  /** The room's air. */
  readonly roomSpeedMps: number;
  /** Inside radius, exactly. */
  readonly radiusM: number;
}

/** What is drawn. */
export interface World {
  readonly fewest: number;
  readonly most: number;
  /** End correction over radius, from and to. */
  readonly mouth: readonly [low: number, high: number];
  readonly hasDiameter: boolean;
  readonly hasTemperature: boolean;
  /** Standard deviation of the reading, and what is stated of it; null: nothing, nor how the place was found. */
  readonly readingMm: number;
  readonly statedReadingMm: number | null;
  /** How many forks at most, and of which. */
  readonly mostForks: number;
  readonly forksHz: readonly number[];
  /** Kinds of columns; absent: closed in three tables of five, open in one, both in one. */
  readonly kinds?: readonly ('closed' | 'open')[];
  /** In the tube instead of the room's air. */
  readonly gas?: (temperatureC: number) => ColumnGas;
}

/** The usual physics set, from 256 Hz to 512 Hz, and the octave above. */
export const FORKS_HZ = [256, 288, 320, 341.3, 384, 426.6, 480, 512, 1024] as const;

/** Thin to thick rims; the marks' own half a millimetre of hand and rule. */
export const USUAL_WORLD: World = {
  fewest: 3,
  most: 8,
  mouth: [0.58, 0.66],
  hasDiameter: true,
  hasTemperature: true,
  readingMm: 0.7,
  statedReadingMm: 0.7,
  mostForks: 3,
  forksHz: FORKS_HZ,
};

const USUAL_KINDS = [['closed'], ['closed'], ['closed'], ['open'], ['closed', 'open']] as const;
/** Forks are off their stamps by this part, and are said to be (standard). */
const FORK_UNCERTAINTY = 0.001;

/**
 * Draws an experiment: a room of 10 to 32 °C, a tube 20 to 50 mm wide that holds 0.5 to 1.6 m, one end closed or both
 * open or both kinds, a rule with half a millimetre of zero and 0.02 % of scale, places that the bench showed to 0.15
 * half widths, a thermometer good to half a kelvin, a diameter to 0.2 mm.
 */
export function drawWorldTable(
  random: Random,
  world: World,
  find: (column: TestColumn, order: number) => Resonance | null,
): WorldTable {
  for (;;) {
    const table = tryWorldTable(random, world, find);
    if (table !== null) return table;
  }
}

function tryWorldTable(
  random: Random,
  world: World,
  find: (column: TestColumn, order: number) => Resonance | null,
): WorldTable | null {
  const temperatureC = random.between(10, 32);
  const humidityPct = random.between(20, 80);
  const air = moistAir({ temperatureC, humidityPct, co2: random.between(0.0004, 0.0015) });
  const gas = world.gas?.(temperatureC) ?? air;
  const radiusM = random.between(0.01, 0.025);
  const travelM = random.between(0.5, 1.6);
  const zeroM = 0.0005 * random.normal();
  const scale = 1 + 2e-4 * random.normal();
  const mouthRatio = random.between(...world.mouth);
  const farRatio = random.between(0.6133, 0.66);
  const kinds = world.kinds ?? random.oneOf(USUAL_KINDS);
  const forks = random.shuffled(world.forksHz).slice(0, 1 + Math.floor(random.uniform() * world.mostForks));
  const written = {
    diameterMm: world.hasDiameter ? round(2000 * radiusM + 0.2 * random.normal(), 1) : null,
    temperatureC: world.hasTemperature ? round(temperatureC + 0.5 * random.normal(), 1) : null,
    humidityPct: world.hasTemperature ? round(humidityPct, 0) : null,
    order: null,
    lengthUncertaintyMm: world.statedReadingMm,
    locatedBy: world.statedReadingMm === null ? ('' as const) : ('centre' as const),
  };

  const pool: { readonly row: WrittenRow; readonly order: number }[] = [];
  for (const forkHz of forks) {
    const frequencyHz = forkHz * (1 + FORK_UNCERTAINTY * random.normal());
    for (const ends of kinds) {
      const column = { gas, radiusM, frequencyHz, ends, mouthRatio, farRatio };
      for (let order = 1; order < 30; order += 1) {
        const resonance = find(column, order);
        if (resonance === null || resonance.lengthM < 0.03) continue;
        if (resonance.lengthM > travelM) break;
        if (random.uniform() < 0.1) continue;
        const foundM =
          resonance.lengthM +
          0.15 * resonance.halfWidthM * random.normal() +
          0.001 * world.readingMm * random.normal();
        const lengthCm = round(100 * (foundM * scale + zeroM), 2);
        const row = { ...written, forkHz, ends, lengthCm, forkUncertaintyHz: FORK_UNCERTAINTY * forkHz };
        pool.push({ row, order });
      }
    }
  }
  const wanted = world.fewest + Math.floor(random.uniform() * (world.most - world.fewest + 1));
  if (pool.length < wanted) return null;
  // Half of the students take the first resonances of a fork first, the others whatever they come across.
  const chosen = (random.uniform() < 0.5 ? pool : random.shuffled(pool)).slice(0, wanted);
  return {
    rows: chosen.map(({ row }) => row),
    trueOrders: chosen.map(({ order }) => order),
    trueSpeedMps: gas.speedMps,
    roomSpeedMps: air.speedMps,
    radiusM,
  };
}

function round(value: number, digits: number): number {
  return Number(value.toFixed(digits));
}
