import { BLUNDERS, SLIP_OF_ONE_CENTIMETRE, SWAPPED_FORK } from './blunders.ts';
import { COVERAGE_WORLDS, measureCoverage } from './coverageRows.ts';
import type { Rival } from './coverageRows.ts';
import { measureBlunder, measureFound } from './measureBlunders.ts';
import type { Known } from './measureBlunders.ts';

/** The tables of `npm run bench:solver`: how often the interval holds, and what is said of blunders. */
export function printWorlds(tables: number, blundered: number, seed: number): void {
  printCoverage(tables, seed);
  printFound(tables, seed + 1);
  printBlunders(blundered, seed + 2);
}

const WITH: readonly (readonly [mark: string, known: Known])[] = [
  ['T d', { hasTemperature: true, hasDiameter: true }],
  ['  d', { hasTemperature: false, hasDiameter: true }],
  ['T  ', { hasTemperature: true, hasDiameter: false }],
  ['   ', { hasTemperature: false, hasDiameter: false }],
];

function printCoverage(tables: number, seed: number): void {
  line(`Tables by an independent forward model (tests/support/column), ${tables} a row, seed ${seed}.`);
  line('T: with a thermometer. Textbooks: bias / rms error (the bench in the same tables), %.');
  line(
    `${cell('tables', 52)}    ${['cover %', 'U %', 'bias %', 'orders %', 'alarmed %'].map((text) => text.padStart(15)).join('')}  difference of two        one length, 0.3 d`,
  );
  for (const [title, world] of COVERAGE_WORLDS) {
    for (const hasTemperature of [true, false]) {
      const row = measureCoverage({ ...world, hasTemperature }, tables, seed);
      const numbers = [
        row.coveragePct.toFixed(1),
        row.medianExpandedPct.toFixed(2),
        `${row.biasPct.toFixed(3)} ± ${row.biasStandardErrorPct.toFixed(3)}`,
        row.ordersRightPct.toFixed(2),
        row.alarmedPct.toFixed(1),
      ];
      line(
        `${cell(title, 52)} ${hasTemperature ? 'T' : ' '}  ${numbers.map((text) => text.padStart(15)).join('')}  ${cell(rival(row.difference), 23)}  ${rival(row.single)}`,
      );
    }
  }
}

function rival(row: Rival | null): string {
  if (row === null) return '-';
  return `${row.biasPct.toFixed(2)} / ${row.errorPct.toFixed(2)} (${row.benchErrorPct.toFixed(2)})`;
}

function printFound(tables: number, seed: number): void {
  const known = WITH[0][1];
  line('');
  line(`Among 5 to 8 marks the wrong one is named, goal 98 %:`);
  for (const blunder of [SLIP_OF_ONE_CENTIMETRE, SWAPPED_FORK]) {
    line(`${cell(blunder.title, 52)}    ${right(measureFound(blunder, known, tables, seed).toFixed(1))} %`);
  }
}

function printBlunders(tables: number, seed: number): void {
  line('');
  line(
    `Wrong by more than 2 U without an alarm / nor a word that nothing could show it (all that are wrong), % of ${tables} tables.`,
  );
  line('T: temperature known, d: diameter known.');
  line(`${cell('blunder', 52)}${WITH.map(([mark]) => mark.padStart(20)).join('')}`);
  let [kinds, silentKinds] = [0, 0];
  for (const blunder of BLUNDERS) {
    const cells = WITH.map(([, knownHere]) => {
      const isLeftOut =
        (blunder.needs === 'diameter' && !knownHere.hasDiameter) ||
        (blunder.needs === 'temperature' && !knownHere.hasTemperature);
      return isLeftOut ? null : measureBlunder(blunder, knownHere, tables, seed);
    });
    kinds += 1;
    if (cells.some((row) => row !== null && row.silentPct > 0)) silentKinds += 1;
    const texts = cells.map((row) =>
      row === null
        ? '-'
        : `${row.silentPct.toFixed(1)} / ${row.untoldPct.toFixed(1)} (${row.wrongPct.toFixed(0)})`,
    );
    line(`${cell(blunder.title, 52)}${texts.map((text) => text.padStart(20)).join('')}`);
  }
  line(`${silentKinds} of ${kinds} kinds left some wrong table without an alarm; goal 0.`);
}

function cell(text: string, width: number): string {
  return text.padEnd(width);
}

function right(text: string): string {
  return text.padStart(10);
}

function line(text: string): void {
  process.stdout.write(`${text}\n`);
}
