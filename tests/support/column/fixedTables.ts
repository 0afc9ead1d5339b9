import { writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { moistAir } from './columnGas.ts';
import { FLANGE, resonances, THIN_RIM, thickRim } from './independentColumn.ts';

/** Columns of one tube in one air: each fork with the orders that were measured. */
interface FixedTable {
  readonly name: string;
  readonly diameterMm: number;
  readonly temperatureC: number;
  readonly humidityPct: number;
  readonly mouthRatio: number;
  readonly columns: readonly (readonly [
    forkHz: number,
    ends: 'closed' | 'open',
    orders: readonly number[],
  ])[];
}

const RIM = { mouthRatio: THIN_RIM };
/** A wall of 2 mm around a tube of 30 mm. */
const WALL = { mouthRatio: thickRim(15 / 17) };
const ROOM = { temperatureC: 20, humidityPct: 50 };

const TABLES: readonly FixedTable[] = [
  { name: 'three closed', diameterMm: 30, ...ROOM, ...RIM, columns: [[512, 'closed', [1, 2, 3]]] },
  { name: 'thick rim', diameterMm: 30, ...ROOM, ...WALL, columns: [[480, 'closed', [1, 2, 3]]] },
  {
    name: 'three forks',
    diameterMm: 40,
    temperatureC: 22.5,
    humidityPct: 35,
    ...WALL,
    columns: [
      [256, 'closed', [1, 2]],
      [384, 'closed', [1, 2]],
      [512, 'closed', [1, 2, 3]],
    ],
  },
  { name: 'open', diameterMm: 25, ...ROOM, ...RIM, columns: [[426.6, 'open', [1, 2, 3]]] },
  {
    name: 'closed and open',
    diameterMm: 35,
    temperatureC: 18,
    humidityPct: 60,
    ...RIM,
    columns: [
      [320, 'closed', [1, 2]],
      [512, 'open', [1, 2, 3]],
    ],
  },
  {
    name: 'wide and high',
    diameterMm: 50,
    temperatureC: 24,
    humidityPct: 40,
    ...RIM,
    columns: [[1024, 'closed', [1, 2, 3, 4, 5]]],
  },
  {
    name: 'narrow and cold',
    diameterMm: 20,
    temperatureC: 5,
    humidityPct: 80,
    ...RIM,
    columns: [[341.3, 'closed', [1, 2, 3]]],
  },
  {
    name: 'warm and moist',
    diameterMm: 32,
    temperatureC: 32,
    humidityPct: 85,
    ...WALL,
    columns: [[288, 'closed', [1, 2, 3]]],
  },
  { name: 'flange', diameterMm: 38, ...ROOM, mouthRatio: FLANGE, columns: [[512, 'closed', [1, 2, 3, 4]]] },
  { name: 'two', diameterMm: 35, ...ROOM, ...RIM, columns: [[512, 'closed', [1, 2]]] },
  { name: 'one', diameterMm: 35, ...ROOM, ...RIM, columns: [[512, 'closed', [1]]] },
  {
    name: 'orders passed over',
    diameterMm: 30,
    ...ROOM,
    ...RIM,
    columns: [[480, 'closed', [1, 3, 4]]],
  },
];

const HEADER = `# Resonant lengths of columns by an independent forward model, as a table of marks that the bench reads.
# Made by: node --import tsx/esm tests/support/column/fixedTables.ts
# Method: zero of the reactance at the fork's end of a lossy transmission line. Walls: Zwikker & Kosten 1949, ch. II, with
#   viscosity and conductivity of the U.S. Standard Atmosphere 1976. Mouth: Levine & Schwinger 1948, integrated, its end
#   correction stretched to mouth_ratio (e over radius as ka tends to 0). Air: handbook's 331.45 m/s at 0 degC, root of the
#   absolute temperature, moisture by gamma and M (Bohn 1988) with the saturation pressure of ISO 9613-1.
# true_speed_mps: free air. Lengths without any error; forks exact. 101 325 Pa, 400 ppm of CO2.
`;

/** The text of `fixtures/impedance-columns.csv`. */
export function fixedTables(): string {
  const find = resonances();
  const lines = TABLES.flatMap((table) => {
    const { name, diameterMm, temperatureC, humidityPct, mouthRatio } = table;
    const gas = moistAir({ temperatureC, humidityPct, co2: 0.0004 });
    return table.columns.flatMap(([frequencyHz, ends, orders]) => {
      const column = { gas, radiusM: diameterMm / 2000, frequencyHz, ends, mouthRatio, farRatio: mouthRatio };
      return orders.map((order) => {
        const resonance = find(column, order);
        if (resonance === null) throw new Error(`${name}: no resonance ${order} at ${frequencyHz} Hz`);
        return [
          name,
          frequencyHz,
          ends,
          (100 * resonance.lengthM).toFixed(5),
          diameterMm,
          temperatureC,
          humidityPct,
          order,
          mouthRatio.toFixed(4),
          gas.speedMps.toFixed(4),
        ].join(',');
      });
    });
  });
  return `${HEADER}place,fork_hz,ends,length_cm,diameter_mm,temperature_c,humidity_pct,true_order,mouth_ratio,true_speed_mps\n${lines.join('\n')}\n`;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  writeFileSync(resolve(import.meta.dirname, '../../../fixtures/impedance-columns.csv'), fixedTables());
}
