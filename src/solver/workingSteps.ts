import { boundaryLayerM } from '../air/airProperties.ts';
import { USUAL_AIR } from '../air/airState.ts';
import type { LocatedBy } from '../marks/mark.ts';
import type { MarksFit } from './fitMarks.ts';
import { oneEndCorrectionM } from './prepareMarks.ts';
import type { Preparation, PreparedMark } from './prepareMarks.ts';
import type { Solution, SolverMark } from './solution.ts';
import type { KnownEnd, WorkingStep } from './workingStep.ts';

/** Part of the standard uncertainty below which a line of the budget isn't written out. */
const NEGLIGIBLE = 0.01;

/** Every step from lengths to the result, as a student would do it by hand, with this experiment's numbers. */
export function workingSteps(
  preparation: Preparation,
  orders: readonly number[],
  fit: MarksFit,
  solution: Omit<Solution, 'working' | 'warnings'>,
): readonly WorkingStep[] {
  const pair = widestPair(preparation.rows, orders, fit);
  const steps = pair === null ? fromOneLength(preparation, orders, fit) : fromDifference(pair);
  const used = fit.speedWeights.filter((weight) => weight !== 0).length;
  // Two lengths of one fork alone give both numbers by hand, and what is known of the mouth changes them.
  if (used > (pair === null ? 1 : 2) || (pair !== null && fit.constraint !== null)) {
    steps.push({
      kind: 'fit-of-all-marks',
      known: knownEnd(preparation, fit),
      ofMarks: solution.endCorrectionOfMarks,
      markCount: used,
      chiSquared: fit.chiSquared,
      degreesOfFreedom: fit.degreesOfFreedom,
      speedMps: fit.speedMps,
      endCorrectionM: solution.endCorrectionM,
    });
  }
  return [...steps, ...fromWallsOn(preparation, fit, solution)];
}

/** What counts beside the marks; null where they alone give the end correction. */
function knownEnd({ endIsRelative }: Preparation, { constraint }: MarksFit): KnownEnd | null {
  if (constraint === null) return null;
  const { value, standardUncertainty } = constraint;
  return { isRelative: endIsRelative, expected: value, standardUncertainty };
}

interface Pair {
  readonly near: PreparedMark;
  readonly nearOrder: number;
  readonly far: PreparedMark;
  readonly farOrder: number;
}

/** Two fitted marks of one fork and column type whose orders are furthest apart. */
function widestPair(rows: readonly PreparedMark[], orders: readonly number[], fit: MarksFit): Pair | null {
  const extremes = new Map<string, Pair>();
  for (const [i, row] of rows.entries()) {
    if (fit.speedWeights[i] === 0) continue;
    const order = orders[i];
    const name = `${row.fork} ${row.ends}`;
    const found = extremes.get(name);
    if (found === undefined) extremes.set(name, { near: row, nearOrder: order, far: row, farOrder: order });
    else if (order < found.nearOrder) extremes.set(name, { ...found, near: row, nearOrder: order });
    else if (order > found.farOrder) extremes.set(name, { ...found, far: row, farOrder: order });
  }
  let best: Pair | null = null;
  let widest = 0;
  for (const pair of extremes.values()) {
    const apart = pair.farOrder - pair.nearOrder;
    if (apart <= widest) continue;
    best = pair;
    widest = apart;
  }
  return best;
}

function fromDifference({ near, nearOrder, far, farOrder }: Pair): WorkingStep[] {
  const { lengthM, ends } = near;
  const halfWaveM = (far.lengthM - lengthM) / (farOrder - nearOrder);
  const wavelengthM = 2 * halfWaveM;
  return [
    {
      kind: 'half-wave-from-difference',
      ends,
      nearLengthM: lengthM,
      nearOrder,
      farLengthM: far.lengthM,
      farOrder,
      halfWaveM,
    },
    { kind: 'wavelength-from-half-wave', halfWaveM, wavelengthM },
    speedStep(near.mark.frequencyHz, wavelengthM),
    {
      kind: 'end-correction',
      ends,
      lengthM,
      order: nearOrder,
      halfWaveM,
      radiusM: near.mark.radiusM,
      endCorrectionM:
        ends === 'closed' ? (nearOrder - 0.5) * halfWaveM - lengthM : (nearOrder * halfWaveM - lengthM) / 2,
    },
  ];
}

function fromOneLength(preparation: Preparation, orders: readonly number[], fit: MarksFit): WorkingStep[] {
  const fitted = fit.speedWeights.findIndex((weight) => weight !== 0);
  const index = Math.max(fitted, 0);
  const row = preparation.rows[index];
  const order = orders[index];
  const { ends, lengthM } = row;
  const endCorrectionM = oneEndCorrectionM(row, fit.end);
  const columnM = lengthM + (ends === 'closed' ? endCorrectionM : 2 * endCorrectionM);
  const wavelengthM = ends === 'closed' ? (4 * columnM) / (2 * order - 1) : (2 * columnM) / order;
  return [
    {
      kind: 'column-length',
      ends,
      lengthM,
      endCorrectionM,
      columnM,
      radiusM: row.mark.radiusM,
      known: knownEnd(preparation, fit),
    },
    { kind: 'wavelength-from-column', ends, order, columnM, wavelengthM },
    speedStep(row.mark.frequencyHz, wavelengthM),
  ];
}

function speedStep(frequencyHz: number, wavelengthM: number): WorkingStep {
  return { kind: 'speed-in-tube', frequencyHz, wavelengthM, speedMps: frequencyHz * wavelengthM };
}

function fromWallsOn(
  preparation: Preparation,
  fit: MarksFit,
  solution: Omit<Solution, 'working' | 'warnings'>,
): WorkingStep[] {
  const { speedMps, standardUncertaintyMps, theory, agreement, air } = solution;
  const used = preparation.rows.filter((_, i) => fit.speedWeights[i] !== 0);
  const wallFraction = used.reduce((sum, row) => sum + row.wallFraction, 0) / Math.max(used.length, 1);
  const steps: WorkingStep[] = [];
  const slowest = slowestMark(preparation.rows);
  if (slowest !== null) {
    const { temperatureC, filling } = slowest.air ?? air ?? USUAL_AIR;
    steps.push({
      kind: 'free-air',
      speedInTubeMps: speedMps * (1 - wallFraction),
      wallFraction,
      radiusM: slowest.radiusM,
      frequencyHz: slowest.frequencyHz,
      layerM: boundaryLayerM(slowest.frequencyHz, temperatureC, filling),
      speedMps,
    });
  }
  for (const locatedBy of ['centre', 'loudest'] as const) {
    const step = placeStep(used, locatedBy, preparation, solution);
    if (step !== null) steps.push(step);
  }
  const all = solution.budget.map(({ contributionMps }) => contributionMps).filter((mps) => mps > 0);
  // A line of less than a hundredth of u changes it by less than a part in 20 000: nobody squares that by hand.
  const contributionsMps = all.filter((mps) => mps > NEGLIGIBLE * standardUncertaintyMps);
  steps.push(
    {
      kind: 'standard-uncertainty',
      contributionsMps,
      isShortened: contributionsMps.length < all.length,
      standardUncertaintyMps,
    },
    {
      kind: 'expanded-uncertainty',
      coverageFactor: solution.coverageFactor,
      standardUncertaintyMps,
      effectiveDegreesOfFreedom: solution.effectiveDegreesOfFreedom,
      expandedUncertaintyMps: solution.expandedUncertaintyMps,
    },
  );
  if (theory !== null && air !== null && agreement !== null) {
    const { filling, temperatureC, humidityPct, pressurePa } = air;
    steps.push(
      { kind: 'theory', filling, temperatureC, humidityPct, pressurePa, ...theory },
      { kind: 'difference-from-theory', speedMps, theoryMps: theory.speedMps, ...agreement },
    );
  }
  return steps;
}

/** The mark whose wave the walls slow most; null where no diameter is known, so that the slowing isn't removed. */
function slowestMark(rows: readonly PreparedMark[]) {
  let slowest: { readonly wallFraction: number; readonly radiusM: number; readonly mark: SolverMark } | null =
    null;
  for (const { mark, wallFraction } of rows) {
    if (mark.radiusM === null || wallFraction <= (slowest?.wallFraction ?? 0)) continue;
    slowest = { wallFraction, radiusM: mark.radiusM, mark };
  }
  if (slowest === null) return null;
  const { mark, radiusM } = slowest;
  return { radiusM, frequencyHz: mark.frequencyHz, air: mark.air };
}

/** How far the places found in one way may lie from their resonances; null where no mark was found so. */
function placeStep(
  used: readonly PreparedMark[],
  locatedBy: LocatedBy,
  { wallsRemoved }: Preparation,
  { budget }: Pick<Solution, 'budget'>,
): WorkingStep | null {
  const placeOf = ({ located }: PreparedMark): number =>
    locatedBy === 'centre' ? located.centreUncertaintyM : located.loudestUncertaintyM;
  const rows = used.filter((row) => placeOf(row) > 0);
  if (rows.length === 0) return null;
  const widest = rows.reduce((one, other) => (placeOf(other) > placeOf(one) ? other : one));
  const { halfWidthM, riseDb, isRiseAssumed } = widest.located;
  const line = budget.find(({ source }) => source === 'loudest');
  return {
    kind: 'place',
    locatedBy,
    markCount: rows.length,
    lengthM: widest.lengthM,
    halfWidthM,
    isUsualTube: !wallsRemoved,
    riseDb,
    isRiseAssumed,
    placeHalfWidths: placeOf(widest) / halfWidthM,
    placeM: placeOf(widest),
    contributionMps: locatedBy === 'centre' ? null : (line?.contributionMps ?? 0),
  };
}
