import type { MarksFit } from './fitMarks.ts';
import { oneEndCorrectionM } from './prepareMarks.ts';
import type { Preparation, PreparedMark } from './prepareMarks.ts';
import type { Solution, WorkingStep } from './solution.ts';
import { centimetres, counted, inWords, pitch, significant } from './wording.ts';

/** Part of the standard uncertainty below which a line of the budget isn't written out. */
const NEGLIGIBLE = 0.01;

/** Every step from lengths to the result, as a student would do it by hand, with this experiment's numbers. */
export function writeWorking(
  preparation: Preparation,
  orders: readonly number[],
  fit: MarksFit,
  solution: Omit<Solution, 'working' | 'warnings'>,
): readonly WorkingStep[] {
  const pair = widestPair(preparation.rows, orders, fit);
  const steps = pair === null ? fromOneLength(preparation, orders, fit) : fromDifference(...pair);
  const used = fit.speedWeights.filter((weight) => weight !== 0).length;
  if (used > (pair === null ? 1 : 2)) {
    const freedom = fit.mode === 'free' ? 'v and e' : 'v, with e from theory,';
    steps.push({
      title: 'All marks together',
      formula: 'L = (2n − 1)·v/4f − e (closed), L = n·v/2f − 2e (open)',
      numbers: `${freedom} fitted to ${used} marks by weighted least squares; χ² = ${inWords(fit.chiSquared, fit.chiSquared < 100 ? 1 : 0)} for ${counted(fit.degreesOfFreedom, 'degree')} of freedom`,
      result: `c = ${inWords(fit.speedMps, 2)} m/s in free air, e = ${inWords(solution.endCorrectionM * 1000, 1)} mm`,
    });
  }
  return [...steps, ...fromWallsOn(preparation, fit, solution)];
}

type Pair = readonly [PreparedMark, number, PreparedMark, number];

/** Two fitted marks of one fork and column type whose orders are furthest apart. */
function widestPair(rows: readonly PreparedMark[], orders: readonly number[], fit: MarksFit): Pair | null {
  const extremes = new Map<string, { low: number; high: number }>();
  const orderOf = (i: number): number => orders[i] ?? 1;
  for (const [i, row] of rows.entries()) {
    if (fit.speedWeights[i] === 0) continue;
    const name = `${row.fork} ${row.ends}`;
    const found = extremes.get(name);
    if (found === undefined) extremes.set(name, { low: i, high: i });
    else if (orderOf(i) < orderOf(found.low)) found.low = i;
    else if (orderOf(i) > orderOf(found.high)) found.high = i;
  }
  let best: Pair | null = null;
  for (const { low, high } of extremes.values()) {
    const [one, other] = [rows[low], rows[high]];
    const apart = orderOf(high) - orderOf(low);
    if (one === undefined || other === undefined || apart === 0) continue;
    if (best === null || apart > best[3] - best[1]) best = [one, orderOf(low), other, orderOf(high)];
  }
  return best;
}

function fromDifference(
  near: PreparedMark,
  nearOrder: number,
  far: PreparedMark,
  farOrder: number,
): WorkingStep[] {
  const halfM = (far.lengthM - near.lengthM) / (farOrder - nearOrder);
  const hz = near.mark.frequencyHz;
  const isClosed = near.ends === 'closed';
  const endM = isClosed ? (nearOrder - 0.5) * halfM - near.lengthM : (nearOrder * halfM - near.lengthM) / 2;
  return [
    {
      title: 'Half a wavelength from the difference of two lengths',
      formula: 'λ/2 = (L₂ − L₁)/(n₂ − n₁)',
      numbers: `(${centimetres(far.lengthM)} cm − ${centimetres(near.lengthM)} cm)/(${farOrder} − ${nearOrder})`,
      result: `λ/2 = ${inWords(halfM * 100, 2)} cm`,
    },
    {
      title: 'Wavelength',
      formula: 'λ = 2·(λ/2)',
      numbers: `2 · ${inWords(halfM * 100, 2)} cm`,
      result: `λ = ${inWords(halfM * 200, 2)} cm`,
    },
    speedStep(hz, 2 * halfM),
    {
      title: 'End correction',
      formula: isClosed ? 'e = (2n₁ − 1)·λ/4 − L₁' : 'e = (n₁·λ/2 − L₁)/2',
      numbers: isClosed
        ? `${2 * nearOrder - 1} · ${inWords(halfM * 50, 2)} cm − ${centimetres(near.lengthM)} cm`
        : `(${nearOrder} · ${inWords(halfM * 100, 2)} cm − ${centimetres(near.lengthM)} cm)/2`,
      result: `e = ${inWords(endM * 1000, 1)} mm`,
    },
  ];
}

function fromOneLength(preparation: Preparation, orders: readonly number[], fit: MarksFit): WorkingStep[] {
  const index = fit.speedWeights.findIndex((weight) => weight !== 0);
  const row = preparation.rows[Math.max(index, 0)];
  if (row === undefined) return [];
  const order = orders[Math.max(index, 0)] ?? 1;
  const isClosed = row.ends === 'closed';
  const endM = oneEndCorrectionM(row, fit.end);
  const columnM = row.lengthM + (isClosed ? endM : 2 * endM);
  const waveM = isClosed ? (4 * columnM) / (2 * order - 1) : (2 * columnM) / order;
  return [
    {
      title: 'Length of the sounding column',
      formula: isClosed ? 'ℓ = L + e' : 'ℓ = L + 2e',
      // Marks that contradict each other can give a negative one.
      numbers: `${centimetres(row.lengthM)} cm ${endM < 0 ? '−' : '+'} ${isClosed ? '' : '2 · '}${inWords(Math.abs(endM) * 100, 2)} cm`,
      result: `ℓ = ${inWords(columnM * 100, 2)} cm`,
    },
    {
      title: 'Wavelength',
      formula: isClosed ? 'λ = 4ℓ/(2n − 1)' : 'λ = 2ℓ/n',
      numbers: isClosed
        ? `4 · ${inWords(columnM * 100, 2)} cm/${2 * order - 1}`
        : `2 · ${inWords(columnM * 100, 2)} cm/${order}`,
      result: `λ = ${inWords(waveM * 100, 2)} cm`,
    },
    speedStep(row.mark.frequencyHz, waveM),
  ];
}

function speedStep(hz: number, waveM: number): WorkingStep {
  return {
    title: 'Speed of the wave in the tube',
    formula: 'v = f·λ',
    numbers: `${pitch(hz)} Hz · ${inWords(waveM, 4)} m`,
    result: `v = ${inWords(hz * waveM, 1)} m/s`,
  };
}

function fromWallsOn(
  preparation: Preparation,
  fit: MarksFit,
  solution: Omit<Solution, 'working' | 'warnings'>,
): WorkingStep[] {
  const { theory, agreement, air } = solution;
  const used = preparation.rows.filter((_, i) => fit.speedWeights[i] !== 0);
  const wall = used.reduce((sum, row) => sum + row.wallFraction, 0) / Math.max(used.length, 1);
  const steps: WorkingStep[] = [];
  if (preparation.wallsRemoved) {
    steps.push({
      title: 'Free air: the walls slow the wave',
      formula: 'c = v/(1 − w)',
      numbers: `${inWords(solution.speedMps * (1 - wall), 2)} m/s/(1 − ${inWords(wall, 5)})`,
      result: `c = ${inWords(solution.speedMps, 2)} m/s`,
    });
  }
  const lines = solution.budget.filter(({ contributionMps }) => contributionMps > 0);
  // A line of less than a hundredth of u changes it by less than a part in 20 000: nobody squares that by hand.
  const parts = lines.filter(
    ({ contributionMps }) => contributionMps > NEGLIGIBLE * solution.standardUncertaintyMps,
  );
  const rest = parts.length < lines.length ? ', lines below 1 % of u left out' : '';
  steps.push(
    {
      title: 'Standard uncertainty',
      formula: 'u = √(u₁² + u₂² + …), the lines of the budget',
      numbers: `√(${parts.map(({ contributionMps }) => `${significant(contributionMps, 2)}²`).join(' + ')}) m/s${rest}`,
      result: `u = ${significant(solution.standardUncertaintyMps, 2)} m/s`,
    },
    {
      title: 'Expanded uncertainty, 95 %',
      formula: 'U = k·u, k from Student’s t',
      numbers: `${inWords(solution.coverageFactor, 2)} · ${significant(solution.standardUncertaintyMps, 2)} m/s, ν = ${inWords(solution.effectiveDegreesOfFreedom, 0)}`,
      result: `U = ${significant(solution.expandedUncertaintyMps, 2)} m/s`,
    },
  );
  if (theory !== null && air !== null && agreement !== null) {
    steps.push(
      {
        title: 'Theory',
        formula: 'c(t, h, p), Cramer 1993',
        numbers: `t = ${inWords(air.temperatureC, 1)} °C, h = ${inWords(air.humidityPct, 0)} %, p = ${inWords(air.pressurePa / 100, 0)} hPa`,
        result: `c = ${inWords(theory.speedMps, 2)} m/s, u = ${significant(theory.standardUncertaintyMps, 2)} m/s`,
      },
      {
        title: 'Difference from theory',
        formula: 'Δ = c − c(theory), Eₙ = Δ/√(U² + U(theory)²)',
        // One digit more than the result has: whoever takes one from the other gets the difference that is shown.
        numbers: `${inWords(solution.speedMps, 3)} m/s − ${inWords(theory.speedMps, 3)} m/s`,
        result: `Δ = ${inWords(agreement.differenceMps, 2)} m/s (${inWords(agreement.differencePct, 2)} %), Eₙ = ${inWords(agreement.normalisedError, 2)}`,
      },
    );
  }
  return steps;
}
