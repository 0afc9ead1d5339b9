import { FILLINGS } from '../air/gases.ts';
import { MARK_COLUMNS } from '../marks/markColumns.ts';
import type { ReadColumn } from '../marks/markColumns.ts';

const MEANINGS: Readonly<Record<ReadColumn, string>> = {
  group: 'who measured; any text',
  fork_hz: 'frequency of the fork, Hz',
  ends: 'closed (one end closed) or open (both ends open)',
  length_cm: 'length of the air column, cm; a cell may say its own unit, like 158 mm',
  diameter_mm: 'inside diameter of the tube, mm',
  other_diameter_mm:
    'inside diameter at the other open end of a telescoping tube, mm; the same where it is missing',
  mouth:
    'what the open end looks like: thin-rim, thick-rim, flange, obstructed (a hand or fork close to it) or ideal (no end correction, as in exercises); any of them where it is missing',
  gas: `what is in the tube: ${FILLINGS.join(', ')}; air where it is missing. One gas a table`,
  temperature_c: 'temperature of the air, °C',
  temperature_uncertainty_c: 'its standard uncertainty, °C; 0.5 °C where it is missing',
  humidity_pct: 'relative humidity of the air, %; 50 % where it is missing',
  pressure_hpa: 'pressure of the air, hPa',
  co2_ppm: 'carbon dioxide in the air, ppm; 400 ppm where it is missing',
  place: 'where it was measured; any text',
  order: 'which resonance it is: 1, 2, 3…; worked out where it is missing',
  length_uncertainty_mm: 'standard uncertainty of the length, mm',
  fork_uncertainty_hz: 'standard uncertainty of the fork’s frequency, Hz',
  fork_id:
    'which fork it was; any text: rows of one name share that fork’s error, rows of different names don’t; by frequency where it is missing',
  excluded: 'yes for a mark that is left out of the fit; empty or no for the others',
  other_length_cm: 'the resonance lies between this length and length_cm, cm',
  located_by:
    'centre where the bench showed the resonance’s centre, loudest where it was found by ear or by level; loudest where it is missing',
  rise_db:
    'how much louder than the fork alone the loudest place was, dB; 10 dB for the first resonance where it is missing',
  centre_uncertainty_half_widths:
    'standard uncertainty of a centre’s place, half widths of the resonance; 0.15 at least',
  made_at: 'when the mark was made, ISO 8601; kept, not used',
  note: 'any text; kept, not used',
};

function isRead(
  column: (typeof MARK_COLUMNS)[number],
): column is Extract<typeof column, { name: ReadColumn }> {
  return column.use !== 'shown';
}

/** What `solve --help` says: how it is called, and every column that a table may have. */
export function solveUsage(): string {
  const columns = MARK_COLUMNS.filter(isRead);
  const width = Math.max(...columns.map(({ name }) => name.length));
  const lines = columns.map(
    ({ name, use }) =>
      `  ${name.padEnd(width)}  ${use === 'required' ? 'required' : 'optional'}  ${MEANINGS[name]}`,
  );
  return [
    'usage: npm run --silent solve -- [--json] FILE.csv…',
    'Columns of a table, in any order; commas, semicolons or tabs between the cells:',
    ...lines,
  ].join('\n');
}
