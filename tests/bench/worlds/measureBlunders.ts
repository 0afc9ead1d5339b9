import { resonances } from '../../support/column/independentColumn.ts';
import type { NoSolution, Solution } from '../../../src/solver/solution.ts';
import type { Blunder } from './blunders.ts';
import { seeded } from './random.ts';
import { saidOf, solveWorld } from './solveWorld.ts';
import { drawWorldTable, USUAL_WORLD } from './worldTable.ts';
import type { World, WrittenRow } from './worldTable.ts';

/** What became of one kind of blunder. */
export interface BlunderRow {
  readonly tables: number;
  /** A speed that is off by more than twice its expanded uncertainty. */
  readonly wrongPct: number;
  /** Of all tables: wrong, and no alarm. */
  readonly silentPct: number;
  /** Of all tables: wrong, no alarm, nor a word that nothing could show it. */
  readonly untoldPct: number;
  readonly alarmedPct: number;
}

/** What is known beside the marks. */
export type Known = Pick<World, 'hasTemperature' | 'hasDiameter'>;

/** Draws `count` tables, has the blunder made in each, and looks what is said. */
export function measureBlunder(blunder: Blunder, known: Known, count: number, seed: number): BlunderRow {
  let [wrong, silent, untold, alarmed] = [0, 0, 0, 0];
  for (const { answer, meantMps } of blundered(blunder, known, count, seed)) {
    const { isAlarmed, isCautioned } = saidOf(answer);
    const isWrong =
      answer !== null &&
      answer.speedMps !== null &&
      Math.abs(answer.speedMps - meantMps) > 2 * answer.expandedUncertaintyMps;
    if (isAlarmed) alarmed += 1;
    if (isWrong) wrong += 1;
    if (isWrong && !isAlarmed) silent += 1;
    if (isWrong && !isCautioned) untold += 1;
  }
  const share = (part: number): number => (100 * part) / count;
  return {
    tables: count,
    wrongPct: share(wrong),
    silentPct: share(silent),
    untoldPct: share(untold),
    alarmedPct: share(alarmed),
  };
}

/** Share of tables in which exactly the changed row is among those that are called wrong. */
export function measureFound(blunder: Blunder, known: Known, count: number, seed: number): number {
  let found = 0;
  for (const { answer, rows, written } of blundered(blunder, known, count, seed)) {
    const victim = written.findIndex(
      (row, i) => row.lengthCm !== rows[i].lengthCm || row.forkHz !== rows[i].forkHz,
    );
    if (answer !== null && answer.speedMps !== null && answer.marks[victim]?.outlier === true) found += 1;
  }
  return (100 * found) / count;
}

interface Blundered {
  readonly answer: Solution | NoSolution | null;
  readonly meantMps: number;
  readonly rows: readonly WrittenRow[];
  readonly written: readonly WrittenRow[];
}

function blundered(blunder: Blunder, known: Known, count: number, seed: number): readonly Blundered[] {
  const random = seeded(seed);
  const find = resonances();
  const world = { ...USUAL_WORLD, ...blunder.world, ...known };
  const made: Blundered[] = [];
  while (made.length < count) {
    const table = drawWorldTable(random, world, find);
    const written = blunder.write(table, random);
    if (written === null) continue;
    const meantMps = blunder.meantSpeedMps?.(table) ?? table.trueSpeedMps;
    made.push({ answer: solveWorld(written), meantMps, rows: table.rows, written });
  }
  return made;
}
