import { moistAir, pureGas } from '../../support/column/columnGas.ts';
import type { ColumnGas } from '../../support/column/columnGas.ts';
import type { Random } from './random.ts';
import { FORKS_HZ } from './worldTable.ts';
import type { World, WorldTable, WrittenRow } from './worldTable.ts';

/** One kind of mistake that people make. */
export interface Blunder {
  readonly title: string;
  /** What is drawn before the mistake, beside the usual. */
  readonly world?: Partial<World>;
  /** Which readings it needs: without a thermometer nobody misreads one. */
  readonly needs?: 'diameter' | 'temperature';
  /** The speed that the result should have had, where that isn't the tube's own. */
  readonly meantSpeedMps?: (table: WorldTable) => number;
  /** What is written instead; null where this table leaves no room for the mistake. */
  readonly write: (table: WorldTable, random: Random) => readonly WrittenRow[] | null;
}

const everyRow =
  (change: (row: WrittenRow) => WrittenRow) =>
  ({ rows }: WorldTable): readonly WrittenRow[] =>
    rows.map(change);
const lengths = (change: (cm: number) => number) =>
  everyRow((row) => ({ ...row, lengthCm: round(change(row.lengthCm), 3) }));
const asWritten = ({ rows }: WorldTable): readonly WrittenRow[] => rows;
/** One fork, as most tables have. */
const ONE_FORK = { mostForks: 1, fewest: 2, most: 4 };

/** A whole fork labelled as another one. */
const labelled = (trueHz: number, notedHz: number): Blunder => ({
  title: `${trueHz} Hz labelled ${notedHz}`,
  world: { ...ONE_FORK, forksHz: [trueHz] },
  write: everyRow((row) => ({ ...row, forkHz: notedHz, forkUncertaintyHz: 0.001 * notedHz })),
});

const filledWith = (title: string, gas: (temperatureC: number) => ColumnGas): Blunder => ({
  title,
  world: { ...ONE_FORK, gas },
  write: asWritten,
});

/** Another length of one row, any. */
function oneLength(
  { rows }: WorldTable,
  random: Random,
  change: (cm: number) => number | null,
): readonly WrittenRow[] | null {
  const victim = Math.floor(random.uniform() * rows.length);
  const changed = change(rows[victim].lengthCm);
  return changed === null || changed < 1
    ? null
    : rows.map((row, i) => (i === victim ? { ...row, lengthCm: round(changed, 3) } : row));
}

export const BLUNDERS: readonly Blunder[] = [
  labelled(480, 512),
  labelled(512, 480),
  labelled(256, 512),
  {
    title: 'labels of two forks exchanged',
    world: { mostForks: 2, fewest: 3 },
    write: ({ rows }) => {
      const forks = [...new Set(rows.map(({ forkHz }) => forkHz))];
      if (forks.length !== 2) return null;
      return rows.map((row) => {
        const forkHz = forks[0] === row.forkHz ? forks[1] : forks[0];
        return { ...row, forkHz, forkUncertaintyHz: 0.001 * forkHz };
      });
    },
  },
  { title: 'millimetres typed as centimetres', world: ONE_FORK, write: lengths((cm) => 10 * cm) },
  { title: 'inches typed as centimetres', world: ONE_FORK, write: lengths((cm) => cm / 2.54) },
  filledWith('helium', (temperatureC) => pureGas('helium', temperatureC)),
  filledWith('carbon dioxide', (temperatureC) => pureGas('carbon dioxide', temperatureC)),
  {
    // Breath: 4 % of CO₂, 34 °C, saturated (common knowledge, no source).
    ...filledWith('breath', () => moistAir({ temperatureC: 34, humidityPct: 100, co2: 0.04 })),
    meantSpeedMps: ({ roomSpeedMps }) => roomSpeedMps,
  },
  {
    title: 'rule read from the wrong end',
    world: ONE_FORK,
    write: ({ rows }) => {
      const ruleCm = Math.max(...rows.map(({ lengthCm }) => lengthCm)) > 98 ? 200 : 100;
      return rows.map((row) => ({ ...row, lengthCm: round(ruleCm - row.lengthCm, 2) }));
    },
  },
  {
    title: 'radius typed as diameter',
    needs: 'diameter',
    world: ONE_FORK,
    write: everyRow((row) => ({ ...row, diameterMm: round((row.diameterMm ?? 0) / 2, 1) })),
  },
  {
    title: 'circumference typed as diameter',
    needs: 'diameter',
    world: ONE_FORK,
    write: everyRow((row) => ({ ...row, diameterMm: round(Math.PI * (row.diameterMm ?? 0), 1) })),
  },
  {
    title: 'closed noted as open',
    world: { ...ONE_FORK, kinds: ['closed'] },
    write: everyRow((row) => ({ ...row, ends: 'open' })),
  },
  {
    title: 'open noted as closed',
    world: { ...ONE_FORK, kinds: ['open'] },
    write: everyRow((row) => ({ ...row, ends: 'closed' })),
  },
  {
    title: 'lengths of two rows exchanged',
    world: { mostForks: 3, fewest: 3 },
    write: ({ rows }, random) => {
      const [one, other] = random.shuffled(rows.map((_, i) => i));
      if (rows[one].forkHz === rows[other].forkHz) return null;
      const from = (i: number): number => (i === one ? other : i === other ? one : i);
      return rows.map((row, i) => ({ ...row, lengthCm: rows[from(i)].lengthCm }));
    },
  },
  {
    title: 'rows pasted ten times',
    world: ONE_FORK,
    write: ({ rows }) => Array.from({ length: 10 }, () => rows).flat(),
  },
  {
    title: 'first resonance missed, the others numbered from 1',
    world: { ...ONE_FORK, fewest: 3, most: 8 },
    write: ({ rows, trueOrders }) => {
      const kept = rows
        .map((row, i) => ({ ...row, order: trueOrders[i] - 1 }))
        .filter(({ order }) => order > 0);
      return kept.length < 2 ? null : kept;
    },
  },
  {
    title: 'one resonance passed over, counted on',
    world: { ...ONE_FORK, kinds: ['closed'], fewest: 3, most: 8 },
    write: ({ rows, trueOrders }) => {
      const most = Math.max(...trueOrders);
      return most < 3
        ? null
        : rows.map((row, i) => ({ ...row, order: trueOrders[i] === most ? most - 1 : trueOrders[i] }));
    },
  },
  {
    title: 'temperature wrong by 20 K',
    needs: 'temperature',
    world: ONE_FORK,
    write: (table, random) => {
      const byC = random.oneOf([-20, 20]);
      return everyRow((row) => ({ ...row, temperatureC: round((row.temperatureC ?? 0) + byC, 1) }))(table);
    },
  },
  {
    title: 'Fahrenheit typed as Celsius',
    needs: 'temperature',
    world: ONE_FORK,
    write: everyRow((row) => ({ ...row, temperatureC: round(32 + 1.8 * (row.temperatureC ?? 0), 1) })),
  },
  {
    title: 'zero offset of 2 cm forgotten',
    world: ONE_FORK,
    write: (table, random) => {
      const byCm = random.oneOf([-2, 2]);
      return lengths((cm) => cm + byCm)(table);
    },
  },
  {
    title: 'slip of 1 cm, two marks of one fork',
    world: { mostForks: 1, fewest: 2, most: 2 },
    write: (table, random) => oneLength(table, random, (cm) => cm + random.oneOf([-1, 1])),
  },
  {
    title: 'slip of 10 cm in one row',
    world: { ...ONE_FORK, fewest: 3 },
    write: (table, random) => oneLength(table, random, (cm) => cm + random.oneOf([-10, 10])),
  },
  {
    title: 'two digits of one length exchanged',
    world: { ...ONE_FORK, fewest: 3 },
    write: (table, random) =>
      oneLength(table, random, (cm) => {
        const digits = cm.toFixed(1);
        const [first, second] = digits;
        return cm < 10 || first === second ? null : Number(second + first + digits.slice(2));
      }),
  },
  {
    title: 'lengths with 0.3 d added already',
    world: ONE_FORK,
    write: ({ rows, radiusM }) =>
      rows.map((row) => ({
        ...row,
        lengthCm: round(row.lengthCm + (row.ends === 'open' ? 120 : 60) * radiusM, 2),
      })),
  },
];

export const SLIP_OF_ONE_CENTIMETRE: Blunder = {
  title: 'slip of 1 cm',
  world: { fewest: 5, most: 8 },
  write: (table, random) => oneLength(table, random, (cm) => cm + random.oneOf([-1, 1])),
};

/** A fork that was taken for its neighbour in the set, in one row of several. */
export const SWAPPED_FORK: Blunder = {
  title: 'swapped fork',
  world: { fewest: 5, most: 8, mostForks: 3 },
  write: ({ rows }, random) => {
    const victim = Math.floor(random.uniform() * rows.length);
    const at = FORKS_HZ.findIndex((hz) => hz === rows[victim].forkHz);
    const notedHz = FORKS_HZ[at + (at === 0 ? 1 : at === FORKS_HZ.length - 2 ? -1 : random.oneOf([-1, 1]))];
    return notedHz === undefined
      ? null
      : rows.map((row, i) =>
          i === victim ? { ...row, forkHz: notedHz, forkUncertaintyHz: 0.001 * notedHz } : row,
        );
  },
};

function round(value: number, digits: number): number {
  return Number(value.toFixed(digits));
}
