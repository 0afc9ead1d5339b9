import { RoomBaseline } from '../../room/roomBaseline.ts';
import type { BroadbandMeter } from '../../tone/broadbandMeter.ts';
import { levelDb } from '../../tone/level.ts';
import { VALUES_PER_FRAME } from '../../tone/sideBandNoise.ts';
import type { ToneSeries } from '../../tone/toneSeries.ts';
import type { LevelPoint } from './listeningTypes.ts';

/** Narrow values between two level points: 20 points a second. */
const POINT_STEP = 5;
/** Values that make one level: 0.2 s, a noise bandwidth of 5 Hz. */
const POINT_VALUES = 20;
const POINT_HALF = POINT_VALUES / 2;
/** Tone over noise power below which the tone is not heard: one chance in 1000 that noise alone is above. */
const HEARD = Math.log(1000);

/** A level point with what it was made of. */
export interface TracedPoint {
  readonly point: LevelPoint;
  /** Mean square of the tone averaged in phase over 0.2 s, noise and all, > 0. */
  readonly coherentMeanSquare: number;
}

/** Means over the values around one point. */
interface PointMeans {
  /** |value|², tone and noise together. */
  readonly bandMeanSquare: number;
  /** |mean value|² in the frame that turns with the fork: the tone averaged in phase. */
  readonly coherentMeanSquare: number;
  /** The noise in the near side bands, mean square per Hz. */
  readonly noiseDensity: number;
}

/** Level of the tone against the room, point by point, from a growing series. */
export class LevelTrace {
  private readonly series: ToneSeries;
  private readonly room: RoomBaseline;
  private readonly broadband: BroadbandMeter;
  private nextPoint = POINT_HALF;
  private framesSeen = 0;
  private toneHeard = false;

  /** @param broadband  the whole sound's level */
  constructor(series: ToneSeries, broadband: BroadbandMeter) {
    this.series = series;
    this.room = new RoomBaseline(series.bandwidthHz);
    this.broadband = broadband;
  }

  /**
   * The points that have become due.
   * @param readyIndex  values before this index have their side bands
   * @param offsetHz  the fork's frequency less the one moved to 0 Hz, as known now
   */
  advance(readyIndex: number, offsetHz: number): readonly TracedPoint[] {
    const points: TracedPoint[] = [];
    for (; this.nextPoint + POINT_HALF < readyIndex; this.nextPoint += POINT_STEP) {
      points.push(this.pointAt(this.nextPoint, offsetHz));
    }
    return points;
  }

  private pointAt(index: number, offsetHz: number): TracedPoint {
    const { rateHz, bandwidthHz, sideBands } = this.series;
    const { bandMeanSquare, coherentMeanSquare, noiseDensity } = meansAround(this.series, index, offsetHz);
    this.followRoom(index, bandMeanSquare);
    const bandHz = Math.min(bandwidthHz, rateHz / POINT_VALUES);
    const roomPower = (this.room.density ?? 0) * bandHz;
    const tonePower = coherentMeanSquare - noiseDensity * bandHz;
    const localNoise = sideBands.length === 0 ? 0 : sideBands.near[sideBands.frameAt(index)] * bandHz;
    this.toneHeard = tonePower > HEARD * Math.max(roomPower, localNoise);
    const timeS = index / rateHz;
    const halfS = POINT_HALF / rateHz;
    const roomDb = levelDb(roomPower / 2 + 1e-20);
    const toneDb = this.toneHeard ? levelDb(tonePower / 2) : null;
    const broadbandDb = levelDb(this.broadband.meanSquare(timeS - halfS, timeS + halfS) + 1e-20);
    const riseDb = toneDb === null ? null : toneDb - roomDb;
    return { point: { timeS, toneDb, roomDb, broadbandDb, riseDb }, coherentMeanSquare };
  }

  private followRoom(index: number, bandMeanSquare: number): void {
    const { sideBands } = this.series;
    const end = Math.min(sideBands.length, Math.floor(index / VALUES_PER_FRAME) + 1);
    for (; this.framesSeen < end; this.framesSeen += 1) {
      const nearDensity = sideBands.near[this.framesSeen];
      this.room.push({ nearDensity, bandMeanSquare, forkSounds: this.toneHeard });
    }
  }
}

function meansAround(series: ToneSeries, index: number, offsetHz: number): PointMeans {
  const { rateHz, re, im, sideBands } = series;
  const turn = (-2 * Math.PI * offsetHz) / rateHz;
  let [band, x, y, noiseDensity] = [0, 0, 0, 0];
  for (let k = index - POINT_HALF; k < index + POINT_HALF; k += 1) {
    const cos = Math.cos(turn * k);
    const sin = Math.sin(turn * k);
    band += (re[k] * re[k] + im[k] * im[k]) / POINT_VALUES;
    x += (re[k] * cos - im[k] * sin) / POINT_VALUES;
    y += (re[k] * sin + im[k] * cos) / POINT_VALUES;
    if (sideBands.length > 0) noiseDensity += sideBands.near[sideBands.frameAt(k)] / POINT_VALUES;
  }
  return { bandMeanSquare: band, coherentMeanSquare: x * x + y * y + 1e-20, noiseDensity };
}
