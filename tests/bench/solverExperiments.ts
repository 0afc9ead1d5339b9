import { airFromReadings } from '../../src/air/airState.ts';
import { resonantLengthM } from '../../src/air/columnResonance.ts';
import { endCorrection } from '../../src/air/endCorrection.ts';
import { speedOfSound } from '../../src/air/speedOfSound.ts';
import { wallLoss } from '../../src/air/wallLoss.ts';
import type { SolverMark } from '../../src/solver/solution.ts';

/** A made-up experiment with everything that the solver must find. */
export interface MadeExperiment {
  readonly marks: readonly SolverMark[];
  readonly trueOrders: readonly number[];
  readonly trueSpeedMps: number;
}

/** What is made up, beyond the common course. */
export interface Making {
  readonly readingM: number;
  readonly forkUncertainty: number;
  /** Index-free: the fewest and most marks. */
  readonly fewest: number;
  readonly most: number;
  /** Chance that a resonance below the last one is passed over. */
  readonly missed: number;
}

export const USUAL_MAKING: Making = {
  readingM: 0.0007,
  forkUncertainty: 0.001,
  fewest: 2,
  most: 8,
  missed: 0.15,
};

const PITCHES_HZ = [256, 288, 320, 341.3, 384, 426.6, 480, 512, 1024] as const;

/** Uniform random numbers in 0..1 from a seed, the same on every machine (mulberry32, public domain). */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A normal deviate (Box & Muller 1958). */
export function normalFrom(random: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

/**
 * One experiment: one to four forks, a tube 20–50 mm wide with a travel of 0.5–1.6 m, closed or open or both, air of
 * 5–35 °C, end correction about theory's, readings with the stated normal errors.
 */
export function makeExperiment(random: () => number, making: Making): MadeExperiment {
  for (;;) {
    const experiment = tryExperiment(random, making);
    if (experiment !== null) return experiment;
  }
}

function tryExperiment(random: () => number, making: Making): MadeExperiment | null {
  const between = (low: number, high: number): number => low + (high - low) * random();
  const temperatureC = between(5, 35);
  const humidityPct = between(20, 80);
  const trueAir = airFromReadings({ temperatureC, humidityPct });
  const trueSpeedMps = speedOfSound(trueAir).speedMps;
  const isRead = random() < 0.7;
  const air = isRead
    ? airFromReadings({
        temperatureC: temperatureC + 0.5 * normalFrom(random),
        humidityPct: Math.round(humidityPct),
      })
    : null;
  const radiusM = between(0.01, 0.025);
  const travelM = between(0.5, 1.6);
  const zeroM = 0.0005 * normalFrom(random);
  const scale = 1 + 2e-4 * normalFrom(random);
  // Walls and mouth of a real tube differ from theory by about what the solver says of them.
  const wallFactor = 1 + 0.1 * normalFrom(random);
  const endRatioOff = 0.03 * normalFrom(random);
  const forkCount = 1 + Math.floor(random() * 4);
  const types =
    random() < 0.6
      ? (['closed'] as const)
      : random() < 0.6
        ? (['open'] as const)
        : (['closed', 'open'] as const);

  const marks: SolverMark[] = [];
  const trueOrders: number[] = [];
  const pool: { mark: SolverMark; order: number }[] = [];
  const pitches = [...PITCHES_HZ].sort(() => random() - 0.5).slice(0, forkCount);
  for (const nominalHz of pitches) {
    const trueHz = nominalHz * (1 + making.forkUncertainty * normalFrom(random));
    const slowing = (1 - wallLoss(radiusM, trueHz, temperatureC, trueSpeedMps).speedRatio) * wallFactor;
    const { endCorrectionM } = endCorrection(radiusM, trueHz, trueSpeedMps);
    for (const ends of types) {
      for (let order = 1; order < 20; order += 1) {
        const lengthM = resonantLengthM({
          order,
          ends,
          speedMps: trueSpeedMps * (1 - slowing),
          frequencyHz: trueHz,
          endCorrectionM: endCorrectionM + endRatioOff * radiusM,
        });
        if (lengthM > travelM) break;
        if (lengthM < 0.03 || random() < making.missed) continue;
        const readM = lengthM * scale + zeroM + making.readingM * normalFrom(random);
        pool.push({
          order,
          mark: {
            key: `mark ${pool.length + 1}`,
            forkKey: String(nominalHz),
            frequencyHz: nominalHz,
            frequencyStandardUncertaintyHz: nominalHz * making.forkUncertainty,
            ends,
            lengthM: readM,
            otherLengthM: null,
            lengthStandardUncertaintyM: making.readingM,
            radiusM,
            otherRadiusM: null,
            mouth: 'thin-rim',
            air,
            place: 'bench',
            order: null,
            // These lengths are read at the resonance itself; `locatedExperiments.ts` has those that aren't.
            locatedBy: 'centre',
            centreStandardUncertaintyHalfWidths: 0,
          },
        });
      }
    }
  }
  const wanted = making.fewest + Math.floor(random() * (making.most - making.fewest + 1));
  if (pool.length < making.fewest) return null;
  const shuffled = pool.map((item) => ({ item, at: random() })).sort((one, other) => one.at - other.at);
  for (const { item } of shuffled.slice(0, wanted)) {
    marks.push(item.mark);
    trueOrders.push(item.order);
  }
  return { marks, trueOrders, trueSpeedMps };
}
