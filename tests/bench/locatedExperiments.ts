import { airFromReadings } from '../../src/air/airState.ts';
import { resonanceWidthM, resonantLengthM } from '../../src/air/columnResonance.ts';
import { endCorrection } from '../../src/air/endCorrection.ts';
import { speedOfSound } from '../../src/air/speedOfSound.ts';
import { wallLoss } from '../../src/air/wallLoss.ts';
import type { SolverMark } from '../../src/solver/solution.ts';
import { normalFrom } from './solverExperiments.ts';
import type { MadeExperiment } from './solverExperiments.ts';

/** Where the lengths of a made-up experiment are read, and what the solver is told of it. */
export interface Locating {
  /** Where the hand stops: at the loudest place, or where the bench shows the centre. */
  readonly at: 'loudest' | 'centre';
  /** Whether the rise of each mark is known, or only that it was found by ear. */
  readonly isRiseKnown: boolean;
  /**
   * `falling`: 6 to 14 dB at the first resonance and less at the next ones, since the column's part falls as they grow
   * wider. `any`: each resonance has a rise of its own.
   */
  readonly rises: 'falling' | 'any';
  readonly readingM: number;
  readonly forks: 1 | 2;
}

/** Scatter of the shown centre, half widths: 0.1 to 0.2 were simulated. */
const CENTRE_HALF_WIDTHS = 0.15;
const RISES_DB = [6, 14] as const;
/** What stands out by less is passed over. */
const LEAST_RISE_DB = 3;
const PITCHES_HZ = [256, 288, 320, 341.3, 384, 426.6, 480, 512] as const;
const FORK_UNCERTAINTY = 0.001;
const FEWEST_MARKS = 4;
const MOST_MARKS = 8;
/** Each resonance may be read twice. */
const READINGS = 2;

/**
 * A tube 25 to 44 mm wide, closed or open, one or two forks, 4 to 8 lengths. The angle between the direct sound and the
 * column's is drawn once for each fork and held: hand, fork and microphone stay where they are.
 */
export function makeLocated(random: () => number, locating: Locating): MadeExperiment {
  for (;;) {
    const experiment = tryLocated(random, locating);
    if (experiment !== null) return experiment;
  }
}

/** Largest |1 + m e^{iθ}/(1 + ix)| and the x where it is, by search: no formula of the bench has a part in it. */
export function loudestPlace(
  share: number,
  angleRad: number,
): { readonly halfWidths: number; readonly loudest: number } {
  const levelAt = (x: number): number => {
    const [re, im] = [share * Math.cos(angleRad), share * Math.sin(angleRad)];
    // 1/(1 + ix) = (1 − ix)/(1 + x²).
    return Math.hypot(1 + (re + im * x) / (1 + x * x), (im - re * x) / (1 + x * x));
  };
  let halfWidths = 0;
  for (let x = -4; x <= 4; x += 0.05) if (levelAt(x) > levelAt(halfWidths)) halfWidths = x;
  for (let step = 0.025; step > 1e-6; step /= 2) {
    while (levelAt(halfWidths + step) > levelAt(halfWidths)) halfWidths += step;
    while (levelAt(halfWidths - step) > levelAt(halfWidths)) halfWidths -= step;
  }
  return { halfWidths, loudest: levelAt(halfWidths) };
}

/** The column's share with which the loudest place is this much over the direct sound, by bisection. */
export function shareOfRise(riseDb: number, angleRad: number): number {
  let [low, high] = [0, 2 * 10 ** (riseDb / 20) + 2];
  for (let round = 0; round < 40; round += 1) {
    const middle = (low + high) / 2;
    if (20 * Math.log10(loudestPlace(middle, angleRad).loudest) > riseDb) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

function tryLocated(random: () => number, locating: Locating): MadeExperiment | null {
  const between = (low: number, high: number): number => low + (high - low) * random();
  const temperatureC = between(10, 30);
  const humidityPct = between(20, 80);
  const trueSpeedMps = speedOfSound(airFromReadings({ temperatureC, humidityPct })).speedMps;
  const air = airFromReadings({
    temperatureC: temperatureC + 0.5 * normalFrom(random),
    humidityPct: Math.round(humidityPct),
  });
  const radiusM = between(0.0125, 0.022);
  const travelM = between(0.8, 1.6);
  const zeroM = 0.0005 * normalFrom(random);
  const scale = 1 + 2e-4 * normalFrom(random);
  const wallFactor = 1 + 0.1 * normalFrom(random);
  const endRatioOff = 0.03 * normalFrom(random);
  const ends = random() < 0.6 ? 'closed' : 'open';
  const pitches = [...PITCHES_HZ]
    .map((hz) => ({ hz, at: random() }))
    .sort((one, other) => one.at - other.at)
    .slice(0, locating.forks);

  const pool: { mark: SolverMark; order: number }[] = [];
  for (const { hz } of pitches) {
    const frequencyHz = hz * (1 + FORK_UNCERTAINTY * normalFrom(random));
    const { attenuationNpPerM, speedRatio } = wallLoss(radiusM, frequencyHz, temperatureC, trueSpeedMps);
    const speedMps = trueSpeedMps * (1 - (1 - speedRatio) * wallFactor);
    const { endCorrectionM } = endCorrection(radiusM, frequencyHz, trueSpeedMps);
    const angleRad = between(-Math.PI, Math.PI);
    const firstRiseDb = between(...RISES_DB);
    /** The share times the half width, which stays the same along the tube, m. */
    let strengthM: number | null = null;
    for (let order = 1; order < 20; order += 1) {
      const endM = endCorrectionM + endRatioOff * radiusM;
      const lengthM = resonantLengthM({ order, ends, speedMps, frequencyHz, endCorrectionM: endM });
      if (lengthM > travelM) break;
      if (lengthM < 0.03) continue;
      const halfWidthM =
        resonanceWidthM({ lengthM, ends, radiusM, frequencyHz, speedMps, attenuationNpPerM }) / 2;
      strengthM ??= shareOfRise(firstRiseDb, angleRad) * halfWidthM;
      const share =
        locating.rises === 'any' ? shareOfRise(between(...RISES_DB), angleRad) : strengthM / halfWidthM;
      const { halfWidths, loudest } = loudestPlace(share, angleRad);
      const riseDb = 20 * Math.log10(loudest);
      if (riseDb < LEAST_RISE_DB) continue;
      for (let reading = 0; reading < READINGS; reading += 1) {
        const placeM =
          lengthM +
          halfWidthM * (locating.at === 'loudest' ? halfWidths : CENTRE_HALF_WIDTHS * normalFrom(random));
        pool.push({
          order,
          mark: {
            key: `mark ${pool.length + 1}`,
            forkKey: String(hz),
            frequencyHz: hz,
            frequencyStandardUncertaintyHz: hz * FORK_UNCERTAINTY,
            ends,
            lengthM: placeM * scale + zeroM + locating.readingM * normalFrom(random),
            otherLengthM: null,
            lengthStandardUncertaintyM: locating.readingM,
            radiusM,
            otherRadiusM: null,
            mouth: 'thin-rim',
            air,
            place: 'bench',
            order: null,
            locatedBy: locating.at,
            riseDb: locating.isRiseKnown ? riseDb : null,
          },
        });
      }
    }
  }
  const wanted = FEWEST_MARKS + Math.floor(random() * (MOST_MARKS - FEWEST_MARKS + 1));
  if (pool.length < wanted) return null;
  const chosen = pool
    .map((item) => ({ item, at: random() }))
    .sort((one, other) => one.at - other.at)
    .slice(0, wanted)
    .map(({ item }) => item);
  return {
    marks: chosen.map(({ mark }) => mark),
    trueOrders: chosen.map(({ order }) => order),
    trueSpeedMps,
  };
}
