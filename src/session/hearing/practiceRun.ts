import { PracticeColumn } from '../../capture/practice/practiceColumn.ts';
import { PRACTICE_WIDTHS_M, USUAL_PRACTICE } from '../../capture/practice/practiceSettings.ts';
import type { PracticeSettings } from '../../capture/practice/practiceSettings.ts';
import type { RoomNoise } from '../../capture/practice/roomScene.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import type { PracticeReadings } from './practiceReadings.ts';
import { isReadThere, practiceResonances } from './practiceResonances.ts';
import type { PracticeResonance } from './practiceResonances.ts';

/** How fast the practice hand follows the handle, m/s: a careful slide. */
export const PRACTICE_SLIDE_MPS = 0.05;
/** A hand that knows its fork takes so long from one resonance to the next, s: any faster and no level tells them apart. */
const LEAST_HALF_WAVE_S = 1.7;
/** Half a wavelength times the pitch, m/s: half the speed of sound in a room. */
const HALF_WAVE_MPS = 172;

/** Above this pitch the usual tube radiates so much that its resonances hardly rise, Hz. */
const HIGHEST_IN_USUAL_TUBE_HZ = 2500;
/** The tube that is lent where one of the forks is higher, m: one tube for all forks, as on a bench. */
const NARROW_DIAMETER_M = 0.016;
/** The mouth's formulas end at ka = 1.5 (Dalmont, Nederveen & Joly 2001); a fork may be a little above its stamp. */
const HIGHEST_KA = 1.45;
/** No room is colder than this speed of sound says, m/s. */
const SLOWEST_MPS = 330;
/** The shortest column of the practice tube, m; half of the travel where that is less. */
const SHORTEST_M = 0.02;

/** In a full class a slide must be slower to be heard: of 18 passages 15 at 3 cm/s, 9 at 5 cm/s, struck every 6 s. */
const LOUD_ROOM_SHARE = 0.6;
/** After so many of its decay times a fork is too faint for the room (measured on the practice column). */
const FRESH_DECAYS: Readonly<Record<RoomNoise, number>> = { quiet: 2, talk: 1, 'full class': 0.5 };

/** What the student's hands have done, as far as the guide goes by it. */
export interface PracticeDeeds {
  /** This fork was struck. */
  readonly isStruck: boolean;
  /** It has neither been damped nor become too faint for the room since. */
  readonly isForkFresh: boolean;
  /** How many resonances the tube has with this fork. */
  readonly resonances: number;
  /** The column grew past the last of them while the fork sounded, and has come to rest since. */
  readonly hasPassedAll: boolean;
  /** It rests at one of them, or at its loudest place. */
  readonly isAtResonance: boolean;
}

/** The practice column with the apparatus of the open experiment: its fork, its tube. The air is practice's own. */
export class PracticeRun {
  readonly column: PracticeColumn;
  /** Where this column resonates with this fork, and where it is loudest, shortest first. */
  resonances: readonly PracticeResonance[];
  private struckAtS: number | null = null;
  private hasReachedEnd = false;
  private hasPassedAll = false;

  constructor(experiment: Experiment, seed: number) {
    const apparatus = apparatusOf(experiment);
    const lengthM = Math.min(USUAL_PRACTICE.lengthM, apparatus.longestM);
    this.column = new PracticeColumn({ ...apparatus, lengthM }, seed);
    this.setSlideSpeed();
    this.resonances = practiceResonances(this.column);
  }

  /** Takes over fork and tube from the experiment where they changed. */
  follow(experiment: Experiment): void {
    const wanted = apparatusOf(experiment);
    const { apparatus } = this.column;
    const isSame =
      wanted.stampedHz === apparatus.stampedHz &&
      wanted.ends === apparatus.ends &&
      wanted.longestM === apparatus.longestM &&
      wanted.diameterM === apparatus.diameterM;
    if (isSame) return;
    this.column.change(wanted);
    this.setSlideSpeed();
    this.resonances = practiceResonances(this.column);
    this.struckAtS = null;
    this.hasReachedEnd = false;
    this.hasPassedAll = false;
  }

  strike(): void {
    this.column.strike();
    this.struckAtS = this.column.timeS;
  }

  /** Takes note of where the column is; to be called while sound is made. */
  observe(): void {
    const { column } = this;
    const last = this.resonances.at(-1);
    if (last === undefined) return;
    // The last one may lie too near to the tube's end to be left behind.
    const endM = Math.min(last.lengthM + last.halfWidthM, column.apparatus.longestM);
    if (this.isForkFresh && column.lengthM >= endM) this.hasReachedEnd = true;
    if (this.hasReachedEnd && !column.isSliding) this.hasPassedAll = true;
  }

  get deeds(): PracticeDeeds {
    const { column, resonances, hasPassedAll, isForkFresh } = this;
    return {
      isStruck: this.struckAtS !== null,
      isForkFresh,
      resonances: resonances.length,
      hasPassedAll,
      isAtResonance: !column.isSliding && resonances.some((one) => isReadThere(one, column.lengthM)),
    };
  }

  private get isForkFresh(): boolean {
    const { column, struckAtS } = this;
    if (struckAtS === null || !column.forkIsSounding) return false;
    const { noise, decayTimeS } = column.apparatus;
    return column.timeS - struckAtS < FRESH_DECAYS[noise] * decayTimeS;
  }

  get readings(): PracticeReadings {
    const { diameterM, air } = this.column.apparatus;
    return {
      diameterM,
      temperatureC: air.temperatureC,
      humidityPct: air.humidityPct ?? null,
      pressurePa: air.pressurePa ?? null,
    };
  }

  /**
   * Where the handle was put, kept within the tube.
   * @param isRunning  whether sound is made: only then does the tube take its time
   */
  slideTo(lengthM: number, isRunning: boolean): void {
    const { shortestM, longestM } = this.column.apparatus;
    const goalM = Math.min(Math.max(lengthM, shortestM), longestM);
    if (isRunning) this.column.slideTo(goalM);
    else this.column.setLengthM(goalM);
  }

  setNoise(noise: RoomNoise): void {
    this.column.setNoise(noise);
    this.setSlideSpeed();
  }

  private setSlideSpeed(): void {
    const { stampedHz, noise } = this.column.apparatus;
    const share = noise === 'full class' ? LOUD_ROOM_SHARE : 1;
    this.column.setSlideSpeed(share * slideSpeedMps(stampedHz));
  }
}

type Apparatus = Partial<PracticeSettings> & Pick<PracticeSettings, 'stampedHz' | 'ends' | 'longestM'>;

/** The practice bench plays every fork of the notebook, with the experiment's tube where it can be simulated. */
function apparatusOf(experiment: Experiment): Apparatus {
  const fork = experiment.forks.find((candidate) => candidate.id === experiment.present.forkId);
  const stampedHz = fork?.nominalHz ?? 512;
  const { travelM } = experiment.tube;
  const shortestM = Math.min(SHORTEST_M, travelM / 2);
  return {
    stampedHz,
    ends: experiment.present.ends,
    longestM: travelM,
    shortestM,
    diameterM: tubeWidthM(experiment),
  };
}

/** The width that was noted; else, and where the mouth's theory doesn't reach it at the highest fork, a usual one. */
function tubeWidthM({ forks, tube }: Experiment): number {
  const highestHz = Math.max(...forks.map(({ nominalHz }) => nominalHz));
  const [narrowestM, widestM] = PRACTICE_WIDTHS_M;
  const reachM = (2 * HIGHEST_KA * SLOWEST_MPS) / (2 * Math.PI * highestHz);
  const { diameterM } = tube;
  if (diameterM !== null && diameterM >= narrowestM && diameterM <= Math.min(widestM, reachM))
    return diameterM;
  return highestHz > HIGHEST_IN_USUAL_TUBE_HZ ? NARROW_DIAMETER_M : USUAL_PRACTICE.diameterM;
}

function slideSpeedMps(stampedHz: number): number {
  return Math.min(PRACTICE_SLIDE_MPS, HALF_WAVE_MPS / stampedHz / LEAST_HALF_WAVE_S);
}
