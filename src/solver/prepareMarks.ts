import { airFromReadings, USUAL_AIR } from '../air/airState.ts';
import type { AirState } from '../air/airState.ts';
import { endCorrectionRatio, HIGHEST_KA, LOW_FREQUENCY_END_RATIO } from '../air/endCorrection.ts';
import { endRatioOfMouth, UNKNOWN_END_M } from '../air/mouth.ts';
import type { MouthShape } from '../air/mouth.ts';
import { USUAL_RADIUS_M } from '../air/usualTube.ts';
import { speedOfSound } from '../air/speedOfSound.ts';
import type { TheoreticalSpeed } from '../air/speedOfSound.ts';
import { wallLoss } from '../air/wallLoss.ts';
import type { WallLoss } from '../air/wallLoss.ts';
import type { ColumnEnds } from '../marks/mark.ts';
import { locationErrors } from './locationErrors.ts';
import type { LocationErrors } from './locationErrors.ts';
import type { RuleErrors, SolverMark, SolverOptions } from './solution.ts';

/** A mark as a row of the linear model  length = halfWaves(order)·halfWavePerSpeed·speed − endShape·end. */
export interface PreparedMark {
  readonly mark: SolverMark;
  readonly fork: number;
  readonly ends: ColumnEnds;
  readonly lengthM: number;
  /** Own variance of the length: reading, bracket, and the centre's place where the bench showed it, m². */
  readonly variance: number;
  /** How far the place that was read may lie from the resonance. */
  readonly located: LocationErrors;
  /** Marks of one setup (fork, place, ends) miss their resonances to one side, by as many standard uncertainties. */
  readonly setup: number;
  /** Half a wavelength over the speed in free reference air, s. */
  readonly halfWavePerSpeedS: number;
  /** Part of the speed that the walls take away; an estimate for a usual tube where the diameter is unknown. */
  readonly wallFraction: number;
  /** Wave number times the radius of the wider mouth; 0 where it isn't known. */
  readonly ka: number;
  /** All open ends' correction over the end parameter. */
  readonly endShape: number;
  readonly relativeForkUncertainty: number;
}

/** What theory says about the end parameter, and what is thinkable. */
export interface EndPrior {
  readonly expected: number;
  readonly standardUncertainty: number;
  readonly lowest: number;
  readonly highest: number;
}

export interface Preparation {
  readonly rows: readonly PreparedMark[];
  /** The end parameter is e over radius where diameters are known, else e in metres. */
  readonly endIsRelative: boolean;
  readonly end: EndPrior;
  /** Where no diameter is known the walls' slowing is not removed. */
  readonly wallsRemoved: boolean;
  readonly rule: RuleErrors;
  readonly air: AirState | null;
  readonly theory: TheoreticalSpeed | null;
  readonly someDiametersMissing: boolean;
  readonly someTemperaturesMissing: boolean;
}

const DEFAULT_RULE: RuleErrors = { zeroStandardUncertaintyM: 0.0005, scaleStandardUncertainty: 2e-4 };
/**
 * Stands for an unknown radius where the walls' slowing can't be removed and becomes uncertainty, m. Narrower than the
 * usual tube, because narrow walls slow more: so the uncertainty covers tubes from 20 mm on.
 */
const NARROW_RADIUS_M = 0.015;
/** Largest e that is thinkable where no diameter is known, m: 1.2 radii of a tube 70 mm wide. */
const UNKNOWN_END_HIGHEST_M = 0.042;

/**
 * Brings marks into the form of the linear model. Speeds of different air are referred to the marks' mean air by
 * theory's ratio, so that one speed fits them all.
 * @param marks  at least one, all numbers checked
 */
export function prepareMarks(marks: readonly SolverMark[], options: SolverOptions): Preparation {
  const air = meanAir(marks);
  const theory = air === null ? null : speedOfSound(air);
  const radii = marks.flatMap(({ radiusM }) => (radiusM === null ? [] : [radiusM]));
  const endIsRelative = radii.length > 0;
  const meanRadiusM = endIsRelative ? mean(radii) : null;
  const mouth = commonMouth(marks);
  const shape = mouth === 'flange' ? 'flanged' : 'unflanged';
  const forkNumber = numbering();
  const setupNumber = numbering();
  const speeds = new Map<AirState, number>();
  const speedIn = (state: AirState): number => {
    const known = speeds.get(state);
    if (known !== undefined) return known;
    const { speedMps } = speedOfSound(state);
    speeds.set(state, speedMps);
    return speedMps;
  };

  // Marks of one fork in one tube and one air share what theory says of them.
  const walls = new Map<AirState, Map<string, WallLoss>>();
  const wallsOf = (radiusM: number, hz: number, state: AirState): WallLoss => {
    const inAir = walls.get(state) ?? new Map<string, WallLoss>();
    walls.set(state, inAir);
    const name = `${radiusM} ${hz}`;
    const known = inAir.get(name);
    if (known !== undefined) return known;
    const loss = wallLoss(radiusM, hz, state.temperatureC, speedIn(state), state.filling);
    inAir.set(name, loss);
    return loss;
  };

  const rows = marks.map((mark): PreparedMark => {
    const localAir = mark.air ?? air ?? USUAL_AIR;
    const localSpeedMps = speedIn(localAir);
    const ratio = mark.air === null || theory === null ? 1 : localSpeedMps / theory.speedMps;
    const radiusM = mark.radiusM ?? meanRadiusM;
    const wallFraction = 1 - wallsOf(radiusM ?? NARROW_RADIUS_M, mark.frequencyHz, localAir).speedRatio;
    const slowed = radiusM === null ? ratio : ratio * (1 - wallFraction);
    const shapeOf = (endRadiusM: number): number => {
      const ka = (2 * Math.PI * mark.frequencyHz * endRadiusM) / localSpeedMps;
      return (
        (endRadiusM * endCorrectionRatio(Math.min(ka, HIGHEST_KA), shape)) / LOW_FREQUENCY_END_RATIO[shape]
      );
    };
    const oneEnd = radiusM === null ? 1 : shapeOf(radiusM);
    const otherEnd = mark.otherRadiusM === null || radiusM === null ? oneEnd : shapeOf(mark.otherRadiusM);
    const bracketM = mark.otherLengthM === null ? 0 : Math.abs(mark.otherLengthM - mark.lengthM);
    const own = mark.lengthStandardUncertaintyM ** 2;
    const tubeRadiusM = radiusM ?? USUAL_RADIUS_M;
    const { attenuationNpPerM } = wallsOf(tubeRadiusM, mark.frequencyHz, localAir);
    const located = locationErrors(mark, {
      radiusM: tubeRadiusM,
      speedMps: localSpeedMps,
      attenuationNpPerM,
    });
    return {
      mark,
      fork: forkNumber(mark.forkKey),
      ends: mark.ends,
      lengthM: mark.otherLengthM === null ? mark.lengthM : (mark.lengthM + mark.otherLengthM) / 2,
      // A bracket says only that the resonance lies inside: a rectangular distribution (JCGM 100:2008, 4.3.7).
      // Copies weigh as much together as one alone.
      variance:
        (mark.copies ?? 1) *
        ((mark.otherLengthM === null ? own : own / 2 + bracketM ** 2 / 12) + located.centreUncertaintyM ** 2),
      located,
      setup: setupNumber(JSON.stringify([mark.forkKey, mark.place, mark.ends])),
      halfWavePerSpeedS: slowed / (2 * mark.frequencyHz),
      wallFraction,
      ka:
        (2 * Math.PI * mark.frequencyHz * Math.max(mark.radiusM ?? 0, mark.otherRadiusM ?? 0)) /
        localSpeedMps,
      endShape: mark.ends === 'open' ? oneEnd + otherEnd : oneEnd,
      relativeForkUncertainty: mark.frequencyStandardUncertaintyHz / mark.frequencyHz,
    };
  });
  const end = knownEnd(mouth, endIsRelative);
  return {
    rows,
    endIsRelative,
    end,
    wallsRemoved: endIsRelative,
    rule: options.rule ?? DEFAULT_RULE,
    air,
    theory,
    someDiametersMissing: endIsRelative && radii.length < marks.length,
    someTemperaturesMissing: air !== null && marks.some((mark) => mark.air === null),
  };
}

/** The mouth that all marks have; null where they don't say, or differ. */
function commonMouth(marks: readonly SolverMark[]): MouthShape | null {
  const mouths = new Set(marks.map(({ mouth }) => mouth ?? null));
  const [mouth] = mouths;
  return mouths.size === 1 && mouth !== undefined ? mouth : null;
}

function knownEnd(mouth: MouthShape | null, isRelative: boolean): EndPrior {
  if (isRelative) {
    const { ratio, standardUncertainty } = endRatioOfMouth(mouth);
    return { expected: ratio, standardUncertainty, lowest: 0, highest: 1.2 };
  }
  if (mouth === 'ideal')
    return { expected: 0, standardUncertainty: 1e-6, lowest: 0, highest: UNKNOWN_END_HIGHEST_M };
  return { ...UNKNOWN_END_M, lowest: 0, highest: UNKNOWN_END_HIGHEST_M };
}

/** Counts names from 0 in the order in which they appear. */
function numbering(): (name: string) => number {
  const known = new Map<string, number>();
  return (name) => {
    const number = known.get(name) ?? known.size;
    known.set(name, number);
    return number;
  };
}

/** Correction of one open end for a mark's own tube and frequency, m. */
export function oneEndCorrectionM(row: PreparedMark, end: number): number {
  return (end * row.endShape) / (row.ends === 'open' ? 2 : 1);
}

function meanAir(marks: readonly SolverMark[]): AirState | null {
  const states = marks.flatMap(({ air }) => (air === null ? [] : [air]));
  const first = states.at(0);
  if (first === undefined) return null;
  if (states.every((state) => state === first)) return first;
  const average = (pick: (state: AirState) => number): number => mean(states.map(pick));
  return {
    ...airFromReadings({
      filling: first.filling,
      temperatureC: average((state) => state.temperatureC),
    }),
    temperatureStandardUncertaintyC: average((state) => state.temperatureStandardUncertaintyC),
    humidityPct: average((state) => state.humidityPct),
    humidityStandardUncertaintyPct: average((state) => state.humidityStandardUncertaintyPct),
    pressurePa: average((state) => state.pressurePa),
    pressureStandardUncertaintyPa: average((state) => state.pressureStandardUncertaintyPa),
    co2MoleFraction: average((state) => state.co2MoleFraction),
    co2StandardUncertainty: average((state) => state.co2StandardUncertainty),
  };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
