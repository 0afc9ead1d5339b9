/*
 * Opens the bench's CSV files in LibreOffice Calc (Debian: libreoffice-calc) and compares cell by cell: numbers must
 * arrive as numbers with all their digits, text as text, and nothing as a formula. Run by hand; CI doesn't need it:
 * npx tsx tests/bench/openInSpreadsheet.ts
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { guarded } from '../../src/marks/formulaGuard.ts';
import { toCsv } from '../../src/report/csv.ts';
import type { Cell } from '../../src/report/csv.ts';
import { EXPERIMENT_TABLES } from '../../src/report/tables/experimentTables.ts';
import { solveExperiment } from '../../src/session/experiment/solveExperiment.ts';
import { exampleExperiment, exampleMark } from '../unit/notebook/exampleExperiment.ts';

interface Shown {
  readonly type: string;
  readonly value: string;
  readonly isFormula: boolean;
}

const NOTES = ['=1+1', '+cmd|x', '-2+3', '@SUM(A1)', 'plain, with "quotes"', 'two\nlines', "'=x", 'Küche'];
const experiment = {
  ...exampleExperiment(
    NOTES.map((note, i) =>
      exampleMark(`m${i}`, { lengthM: 0.162 + 0.3345 * (i % 3), createdAt: 'taken by hand', note }),
    ),
  ),
  places: [
    {
      id: 'place-1',
      name: '-Yard',
      temperatureC: -2.5,
      temperatureStandardUncertaintyC: 0.5,
      humidityPct: 45,
      pressurePa: 101_325,
      filling: 'air' as const,
      co2MoleFraction: 0.0008,
    },
  ],
  rule: { readingStandardUncertaintyM: 0.0007, zeroOffsetM: 0.004 },
  tube: { diameterM: 0.03, otherDiameterM: null, mouth: null, stopper: 'piston' as const, travelM: 1 },
};

const folder = mkdtempSync(join(tmpdir(), 'spreadsheet-'));
const { places } = solveExperiment(experiment);
let wrong = 0;
let compared = 0;
for (const table of EXPERIMENT_TABLES) {
  const rows = table.rows(experiment, places);
  if (rows.length < 2) continue;
  const path = join(folder, `${table.id}.csv`);
  writeFileSync(path, toCsv(rows));
  // Comma, double quotes, UTF-8, from line 1, English numbers.
  const filter = '--infilter=CSV:44,34,76,1,,1033,false,true';
  execFileSync('soffice', ['--headless', '--convert-to', 'fods', filter, '--outdir', folder, path], {
    stdio: 'ignore',
  });
  const shown = readCells(readFileSync(join(folder, `${table.id}.fods`), 'utf8'));
  for (const [r, row] of rows.entries()) {
    for (const [c, cell] of row.entries()) {
      compared += 1;
      const found = shown[r]?.[c];
      if (isRight(cell, found)) continue;
      wrong += 1;
      console.log(
        `${table.id} row ${r + 1} column ${c + 1}: ${JSON.stringify(cell)} is ${JSON.stringify(found)}`,
      );
    }
  }
}
console.log(`${compared} cells compared, ${wrong} wrong`);
process.exitCode = wrong === 0 && compared > 0 ? 0 : 1;

function isRight(cell: Cell, found: Shown | undefined): boolean {
  if (cell === null || cell === '') return found === undefined || found.type === '';
  if (found === undefined || found.isFormula) return false;
  if (typeof cell === 'number') {
    // Calc writes fixed decimals: of numbers that are nearly zero a few digits remain.
    return found.type === 'float' && Math.abs(Number(found.value) - cell) <= 1e-13 * Math.abs(cell) + 1e-18;
  }
  return found.type === 'string' && found.value === guarded(cell);
}

/** The cells of the first sheet of a flat OpenDocument spreadsheet (OASIS ODF 1.3, part 3, 9.1). */
function readCells(fods: string): Shown[][] {
  const sheet = /<table:table [\s\S]*?<\/table:table>/.exec(fods)?.[0] ?? '';
  return [...sheet.matchAll(/<table:table-row[^>]*>([\s\S]*?)<\/table:table-row>/g)].map(([, row = '']) =>
    [...row.matchAll(/<table:table-cell([^>]*?)(?:\/>|>([\s\S]*?)<\/table:table-cell>)/g)].flatMap(
      ([, attributes = '', body = '']) => {
        const repeat = Number(/number-columns-repeated="(\d+)"/.exec(attributes)?.[1] ?? 1);
        const type = /office:value-type="(\w+)"/.exec(attributes)?.[1] ?? '';
        const text = [...body.matchAll(/<text:p>([\s\S]*?)<\/text:p>/g)].map(([, line = '']) => plain(line));
        const value = /office:value="([^"]*)"/.exec(attributes)?.[1] ?? text.join('\n');
        const one = { type, value, isFormula: attributes.includes('table:formula') };
        return Array.from({ length: Math.min(repeat, 30) }, () => one);
      },
    ),
  );
}

function plain(xml: string): string {
  return xml
    .replaceAll(/<[^>]*>/g, '')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&apos;', "'")
    .replaceAll('&amp;', '&');
}
