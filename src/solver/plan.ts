import { airFromReadings } from '../air/airState.ts';
import type { AirState } from '../air/airState.ts';
import { resonanceWidthM, resonantLengthM } from '../air/columnResonance.ts';
import { endCorrection } from '../air/endCorrection.ts';
import { speedOfSound } from '../air/speedOfSound.ts';
import { wallLoss } from '../air/wallLoss.ts';
import type { ColumnEnds } from '../marks/mark.ts';
import { fitMarks, modelLengthM } from './fitMarks.ts';
import { prepareMarks } from './prepareMarks.ts';
import type { SolverMark, SolverOptions } from './solution.ts';
import { solveInFull } from './solve.ts';

/** What is at hand. */
export interface Apparatus {
  readonly forksHz: readonly number[];
  readonly ends: readonly ColumnEnds[];
  /** null: a usual tube of 30 mm. */
  readonly radiusM: number | null;
  /** Longest column, m. */
  readonly travelM: number;
  /** Shortest column that can be set, m. */
  readonly shortestM?: number;
  /** null: 20 °C, uncertain by 5 K. */
  readonly air: AirState | null;
}

export interface ExpectedResonance {
  readonly frequencyHz: number;
  readonly ends: ColumnEnds;
  readonly order: number;
  readonly lengthM: number;
  /** From what is not known of the air and the mouth. */
  readonly standardUncertaintyM: number;
  /** Full width at half power, m. */
  readonly widthM: number;
}

const USUAL_RADIUS_M = 0.015;
/** Beyond this the formulas of the mouth end. */
const HIGHEST_KA = 1.5;
const MOST_ORDERS = 60;

/** Where each fork's resonances should lie within the travel, shortest first; an empty list where none does. */
export function expectedResonances(apparatus: Apparatus): readonly ExpectedResonance[] {
  const { travelM, shortestM = 0.01 } = apparatus;
  const radiusM = apparatus.radiusM ?? USUAL_RADIUS_M;
  const air = apparatus.air ?? airFromReadings({ temperatureC: 20, temperatureStandardUncertaintyC: 5 });
  const free = speedOfSound(air);
  const found: ExpectedResonance[] = [];
  for (const frequencyHz of apparatus.forksHz) {
    if (!(frequencyHz > 0) || (2 * Math.PI * frequencyHz * radiusM) / free.speedMps > HIGHEST_KA) continue;
    const { speedRatio, attenuationNpPerM } = wallLoss(radiusM, frequencyHz, air.temperatureC, free.speedMps);
    const speedMps = free.speedMps * speedRatio;
    const { endCorrectionM, standardUncertaintyM } = endCorrection(radiusM, frequencyHz, speedMps);
    for (const ends of apparatus.ends) {
      for (let order = 1; order <= MOST_ORDERS; order += 1) {
        const lengthM = resonantLengthM({ order, ends, speedMps, frequencyHz, endCorrectionM });
        if (lengthM > travelM) break;
        if (lengthM < shortestM) continue;
        const openEnds = ends === 'open' ? 2 : 1;
        const waveM = lengthM + openEnds * endCorrectionM;
        found.push({
          frequencyHz,
          ends,
          order,
          lengthM,
          standardUncertaintyM: Math.hypot(
            (waveM * free.standardUncertaintyMps) / free.speedMps,
            openEnds * standardUncertaintyM,
          ),
          widthM: resonanceWidthM({ lengthM, ends, radiusM, frequencyHz, speedMps, attenuationNpPerM }),
        });
      }
    }
  }
  return found.sort((one, other) => one.lengthM - other.lengthM);
}

/** A mark that could still be made, and what the speed's uncertainty would be with it. */
export interface NextMark {
  readonly frequencyHz: number;
  readonly ends: ColumnEnds;
  readonly order: number;
  readonly lengthM: number;
  readonly standardUncertaintyMps: number;
  /** Part of the present standard uncertainty that it would take away, 0..1. */
  readonly gain: number;
}

/** Forks of which the user may have several, with the doubt about each pitch. */
export interface AvailableFork {
  readonly forkKey: string;
  readonly frequencyHz: number;
  readonly frequencyStandardUncertaintyHz: number;
}

const MOST_CANDIDATES = 200;

/**
 * Which further mark would shrink the uncertainty of the speed most: each resonance within the travel is tried as a mark
 * at the length where the present fit expects it. Repeats of a mark that is there count too.
 * @returns best first; empty where the present marks have no solution yet
 */
export function nextMarks(
  marks: readonly SolverMark[],
  forks: readonly AvailableFork[],
  ends: readonly ColumnEnds[],
  travelM: number,
  options: SolverOptions = {},
): readonly NextMark[] {
  const present = solveInFull(marks, options);
  const pattern = marks.at(-1);
  if (!('fit' in present) || pattern === undefined) return [];
  const { solution, fit, orders, outliers, preparation } = present;
  const used = preparation.rows.map(({ mark }) => mark);
  const before = solution.standardUncertaintyMps;
  const found: NextMark[] = [];
  for (const fork of forks) {
    for (const type of ends) {
      for (let order = 1; order <= MOST_ORDERS && found.length < MOST_CANDIDATES; order += 1) {
        const mark: SolverMark = {
          ...pattern,
          ...fork,
          key: 'next',
          ends: type,
          otherLengthM: null,
          // Longer than nothing; the true length follows from the model below.
          lengthM: travelM,
          order: null,
        };
        const expectedM = expectedLengthM(used, mark, order, solution.speedMps, fit.end, options);
        if (expectedM > travelM) break;
        if (expectedM < 0.01) continue;
        const wider = prepareMarks([...used, { ...mark, lengthM: expectedM }], options);
        const refit = fitMarks(wider, [...orders, order], [...outliers.map((is) => !is), true]);
        if (refit === null) continue;
        // Both with the scatter as stated, or a lucky residual would count as a gain.
        const standardUncertaintyMps = Math.hypot(
          ...refit.contributions.map(({ contributionMps }) => contributionMps),
        );
        found.push({
          frequencyHz: fork.frequencyHz,
          ends: type,
          order,
          lengthM: expectedM,
          standardUncertaintyMps,
          gain: Math.max(1 - standardUncertaintyMps / before, 0),
        });
      }
    }
  }
  return found.sort((one, other) => one.standardUncertaintyMps - other.standardUncertaintyMps);
}

function expectedLengthM(
  used: readonly SolverMark[],
  mark: SolverMark,
  order: number,
  speedMps: number,
  end: number,
  options: SolverOptions,
): number {
  const row = prepareMarks([...used, mark], options).rows.at(-1);
  return row === undefined ? Infinity : modelLengthM(row, order, speedMps, end);
}
