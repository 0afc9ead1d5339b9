import { modelLengthM } from './fitMarks.ts';
import type { PreparedMark } from './prepareMarks.ts';
import { nearestOrder } from './searchOrders.ts';
import { centimetres, pitch } from './wording.ts';

const SLIPS: readonly { readonly sizeM: number; readonly name: string }[] = [
  { sizeM: 0.01, name: 'centimetre' },
  { sizeM: 0.05, name: 'half decimetre' },
  { sizeM: 0.1, name: 'decimetre' },
  { sizeM: 0.2, name: 'two decimetres' },
  { sizeM: 0.5, name: 'half metre' },
  { sizeM: 1, name: 'metre' },
];

/** Columns hold few more resonances than these. */
const MOST_ORDERS_MEANT = 8;

/** What the other rows say about where a length may belong; worked out once for all rows that are off. */
export interface Company {
  /** One row for each fork with its pitch. */
  readonly forks: readonly PreparedMark[];
  /** Orders near which lengths were marked, by fork and ends. */
  readonly marked: ReadonlyMap<string, ReadonlySet<number>>;
}

/** @param rows  all rows of one solution */
export function companyOf(rows: readonly PreparedMark[], speedMps: number, end: number): Company {
  const forks = new Map<string, PreparedMark>();
  const marked = new Map<string, Set<number>>();
  for (const row of rows) {
    const pitchName = `${row.fork} ${row.mark.frequencyHz} ${row.halfWavePerSpeedS}`;
    if (!forks.has(pitchName)) forks.set(pitchName, row);
    const orders = marked.get(seriesOf(row)) ?? new Set();
    marked.set(seriesOf(row), orders.add(nearestOrder(row, speedMps, end)));
  }
  return { forks: [...forks.values()], marked };
}

function seriesOf(row: PreparedMark): string {
  return `${row.fork} ${row.ends}`;
}

/**
 * Says what may have gone wrong with a mark that doesn't fit.
 * @param residualM  measured minus fitted
 * @param company  of all rows, this one among them
 */
export function likelyCause(
  row: PreparedMark,
  residualM: number,
  speedMps: number,
  end: number,
  company: Company,
): string {
  const toleranceM =
    3 * Math.hypot(Math.sqrt(row.variance), row.lengthM * row.relativeForkUncertainty) + 0.0005;
  const off = `${centimetres(Math.abs(residualM))} cm too ${residualM > 0 ? 'long' : 'short'}`;
  const causes: string[] = [];
  const slip = SLIPS.find(
    ({ sizeM }) => Math.abs(Math.abs(residualM) - sizeM) < Math.min(toleranceM, 0.3 * sizeM),
  );
  if (slip !== undefined) causes.push(`misread ${slip.name}?`);
  else {
    const meantM = meantLengthsM(row, speedMps, end, company);
    if (meantM.some((lengthM) => swappedDigits(row.lengthM, lengthM, toleranceM)))
      causes.push('two digits swapped?');
    else if (meantM.some((lengthM) => slippedPoint(row.lengthM, lengthM, toleranceM)))
      causes.push('decimal point slipped?');
  }

  const flipped: PreparedMark = {
    ...row,
    ends: row.ends === 'closed' ? 'open' : 'closed',
    endShape: row.ends === 'closed' ? 2 * row.endShape : row.endShape / 2,
  };
  const flippedOrder = nearestOrder(flipped, speedMps, end);
  if (Math.abs(row.lengthM - modelLengthM(flipped, flippedOrder, speedMps, end)) < toleranceM) {
    const type = flipped.ends === 'open' ? 'an open' : 'a closed';
    causes.push(`it fits as order ${flippedOrder} of ${type} column.`);
  }
  const rival = company.forks.find((other) => {
    const asOther = { ...row, halfWavePerSpeedS: other.halfWavePerSpeedS };
    const expectedM = modelLengthM(asOther, nearestOrder(asOther, speedMps, end), speedMps, end);
    return other.fork !== row.fork && Math.abs(row.lengthM - expectedM) < toleranceM;
  });
  if (rival !== undefined) {
    const order = nearestOrder({ ...row, halfWavePerSpeedS: rival.halfWavePerSpeedS }, speedMps, end);
    causes.push(
      `it fits as order ${order} of the ${pitch(rival.mark.frequencyHz)} Hz fork: another fork than noted?`,
    );
  }
  return `${off}: ${causes.length > 0 ? causes.join(' Or ') : 'read it again, or look for the resonance again.'}`;
}

/** Lengths that may have been meant: a large slip ends near another order's, but hardly from one that was marked too. */
function meantLengthsM(row: PreparedMark, speedMps: number, end: number, company: Company): number[] {
  const marked = company.marked.get(seriesOf(row));
  const nearest = nearestOrder(row, speedMps, end);
  return Array.from({ length: MOST_ORDERS_MEANT }, (_, i) => i + 1)
    .filter((order) => order === nearest || marked?.has(order) !== true)
    .map((order) => modelLengthM(row, order, speedMps, end));
}

/** Whether the length is ten times too long or too short. */
function slippedPoint(lengthM: number, fittedM: number, toleranceM: number): boolean {
  return Math.abs(10 * lengthM - fittedM) < toleranceM || Math.abs(lengthM / 10 - fittedM) < toleranceM;
}

/** Whether swapping two neighbouring digits of the length in millimetres gives the fitted one. */
function swappedDigits(lengthM: number, fittedM: number, toleranceM: number): boolean {
  const digits = String(Math.round(lengthM * 1000));
  for (let i = 0; i + 1 < digits.length; i += 1) {
    const swapped = digits.slice(0, i) + (digits[i + 1] ?? '') + (digits[i] ?? '') + digits.slice(i + 2);
    if (swapped !== digits && Math.abs(Number(swapped) / 1000 - fittedM) < toleranceM) return true;
  }
  return false;
}
