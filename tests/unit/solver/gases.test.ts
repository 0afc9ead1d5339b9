import { describe, expect, it } from 'vitest';
import { airFromReadings } from '../../../src/air/airState.ts';
import { speedOfSound } from '../../../src/air/speedOfSound.ts';
import { wallLoss } from '../../../src/air/wallLoss.ts';
import { solveTable } from '../../../src/cli/solveTable.ts';
import { readMarksTable } from '../../../src/marks/marksTable.ts';
import { marksOfRows } from '../../../src/solver/marksOfRows.ts';
import { solve } from '../../../src/solver/solve.ts';
import { workingStepWords } from '../../../src/words/workingSteps.ts';
import { moistAir, pureGas } from '../../support/column/columnGas.ts';
import type { PureGas } from '../../support/column/columnGas.ts';
import { resonances, THIN_RIM } from '../../support/column/independentColumn.ts';
import { phaseSpeedMps } from '../../support/column/tubeWave.ts';

const HEADING =
  'fork_hz,ends,length_cm,diameter_mm,gas,temperature_c,fork_uncertainty_hz,length_uncertainty_mm';
const PURE: readonly (readonly [PureGas, 'helium' | 'argon' | 'carbon-dioxide', number])[] = [
  ['helium', 'helium', 1024],
  ['argon', 'argon', 512],
  ['carbon dioxide', 'carbon-dioxide', 512],
];

/** Two resonances of a closed tube of 35 mm, from impedances (tests/support/column). */
function lengthsCm(name: PureGas, frequencyHz: number): readonly number[] {
  const column = {
    gas: pureGas(name, 20),
    radiusM: 0.0175,
    frequencyHz,
    ends: 'closed',
    mouthRatio: THIN_RIM,
    farRatio: THIN_RIM,
  } as const;
  const find = resonances();
  return [1, 2, 3].map((order) => 100 * (find(column, order)?.lengthM ?? NaN));
}

const tableOf = (lengths: readonly number[], hz: number, gas: string, temperature = '20') =>
  [HEADING, ...lengths.map((cm) => `${hz},closed,${cm.toFixed(3)},35,${gas},${temperature},0.05,0.1`)].join(
    '\n',
  );

function solved(text: string) {
  const table = readMarksTable(text);
  if (!table.ok) throw new Error('the table can be read');
  const answer = solve(marksOfRows(table.rows));
  if (answer.speedMps === null) throw new Error('there is a speed');
  return answer;
}

describe('a tube full of another gas', () => {
  it.each(PURE)('%s: walls and mouth are taken off its own wave', (name, gas, hz) => {
    const answer = solved(tableOf(lengthsCm(name, hz), hz, gas));
    const trueMps = pureGas(name, 20).speedMps;
    expect(Math.abs(answer.speedMps / trueMps - 1)).toBeLessThan(0.0005);
    expect(answer.marks.map(({ order }) => order)).toEqual([1, 2, 3]);
    // Theory's own doubt is that of an ideal gas: it agrees.
    expect(Math.abs(answer.agreement?.normalisedError ?? 9)).toBeLessThan(1);
    expect(answer.warnings.map(({ code }) => code)).not.toContain('other-explanation');
    const theory = answer.working.find(({ kind }) => kind === 'theory');
    if (theory === undefined) throw new Error('there is a comparison with theory');
    expect(workingStepWords(theory)).toMatchObject({
      formula: 'c = √(γRT/M)',
      numbers: `${name} at t = 20.0 °C`,
    });
  });

  it('needs no thermometer to be known as helium', () => {
    const answer = solved(tableOf(lengthsCm('helium', 1024), 1024, 'helium', ''));
    expect(answer.speedMps).toBeGreaterThan(1000);
    expect(answer.theory?.standardUncertaintyMps).toBeGreaterThan(8);
  });

  it('isn’t solved together with air, and the table says which rows', () => {
    const answer = solveTable(
      `${HEADING}\n512,closed,15.8,35,air,20,,\n512,closed,49.3,35,,20,,\n512,closed,12,35,argon,20,,\n`,
    );
    if ('error' in answer) throw new Error(answer.error);
    expect(JSON.stringify(answer)).toContain('its gas is argon, that of the first mark is air');
  });

  it('that the bench doesn’t know is a fault with the words that it takes', () => {
    const answer = solveTable(`${HEADING}\n512,closed,15.8,35,xenon,20,,\n`);
    if (!('error' in answer)) throw new Error('xenon isn’t in the list');
    expect(answer.error).toContain('“xenon” is not a gas that this page knows');
    expect(answer.error).toContain('sulfur-hexafluoride');
  });
});

describe('walls in other gases', () => {
  // By another formula with other constants (tests/support/column); both have the constants from memory.
  it.each(PURE)('slow %s as a transmission line does', (name, gas, hz) => {
    const own = pureGas(name, 20);
    const slowed = 1 - phaseSpeedMps(own, 0.0175, hz) / own.speedMps;
    const air = airFromReadings({ temperatureC: 20, filling: gas });
    const found = 1 - wallLoss(0.0175, hz, 20, speedOfSound(air).speedMps, gas).speedRatio;
    expect(Math.abs(found / slowed - 1)).toBeLessThan(0.03);
  });
});

describe('breath', () => {
  it('is air with 4 % of carbon dioxide, as an ideal mixture has it within the stated uncertainty', () => {
    for (const co2 of [0.01, 0.02, 0.04, 0.06]) {
      const air = airFromReadings({ temperatureC: 34, humidityPct: 100, co2MoleFraction: co2 });
      const { speedMps, standardUncertaintyMps } = speedOfSound(air);
      const mixture = moistAir({ temperatureC: 34, humidityPct: 100, co2 }).speedMps;
      expect(Math.abs(speedMps - mixture)).toBeLessThan(1.5 * standardUncertaintyMps);
    }
  });
});
