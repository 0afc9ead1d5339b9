import { PracticeColumn } from '../capture/practice/practiceColumn.ts';
import type { PracticeSettings } from '../capture/practice/practiceSettings.ts';
import type { RoomNoise } from '../capture/practice/roomScene.ts';
import type { Experiment } from '../notebook/experiment.ts';

/** What the instruments on the practice bench read. */
export interface PracticeReadings {
  readonly diameterM: number;
  readonly temperatureC: number;
  readonly humidityPct: number | null;
  readonly pressurePa: number | null;
}

/** How fast the practice hand follows the handle, m/s: a careful slide. */
export const PRACTICE_SLIDE_MPS = 0.05;

/** The practice column with the apparatus of the open experiment: its fork, its ends, its travel. */
export class BenchPractice {
  readonly column: PracticeColumn;

  constructor(experiment: Experiment, seed: number) {
    this.column = new PracticeColumn(apparatusOf(experiment), seed);
    this.column.setSlideSpeed(PRACTICE_SLIDE_MPS);
  }

  /** Takes over fork, ends and travel from the experiment where they changed. */
  follow(experiment: Experiment): void {
    const wanted = apparatusOf(experiment);
    const { apparatus } = this.column;
    const isSame =
      wanted.stampedHz === apparatus.stampedHz &&
      wanted.ends === apparatus.ends &&
      wanted.longestM === apparatus.longestM;
    if (!isSame) this.column.change(wanted);
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
  }
}

function apparatusOf(
  experiment: Experiment,
): Partial<PracticeSettings> & Pick<PracticeSettings, 'stampedHz' | 'ends' | 'longestM'> {
  const fork = experiment.forks.find((candidate) => candidate.id === experiment.present.forkId);
  return {
    stampedHz: fork?.nominalHz ?? 512,
    ends: experiment.present.ends,
    longestM: experiment.tube.travelM,
  };
}
