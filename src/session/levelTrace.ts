import { RoomBaseline } from '../room/roomBaseline.ts';
import type { BroadbandMeter } from '../tone/broadbandMeter.ts';
import { VALUES_PER_FRAME } from '../tone/sideBandNoise.ts';
import { levelDb } from '../tone/level.ts';
import type { ToneSeries } from '../tone/toneSeries.ts';
import type { LevelPoint } from './listeningTypes.ts';

/** Narrow values between two level points: 20 points a second. */
const POINT_STEP = 5;
/** Half of the values that make one level: 0.2 s, a noise bandwidth of 5 Hz. */
const POINT_HALF = 10;
/** Tone over noise power below which the tone is not heard: one chance in 1000 that noise alone is above. */
const HEARD = Math.log(1000);

/** Level of the tone against the room, point by point, from a growing series. */
export class LevelTrace {
  readonly #series: ToneSeries;
  readonly #room: RoomBaseline;
  /** Around the point that is being made; kept, since a number that is handed on is litter. */
  readonly #band = { meanSquare: 0.5 };
  #nextPoint = POINT_HALF;
  #flanksSeen = 0;
  #toneHeard = false;
  #coherentMeanSquare = 0.5;

  constructor(series: ToneSeries) {
    this.#series = series;
    this.#room = new RoomBaseline(series.bandwidthHz);
  }

  /** Of the newest point: mean square of the tone averaged in phase over 0.2 s, noise and all, > 0. */
  get coherentMeanSquare(): number {
    return this.#coherentMeanSquare;
  }

  /**
   * The points that have become due.
   * @param readyIndex  values before this index have their flanks
   * @param offsetHz  the fork's pitch less the frequency moved to 0 Hz, as known now
   * @param broadband  the whole sound's level
   * @param onPoint  gets each
   */
  advance(
    readyIndex: number,
    offsetHz: number,
    broadband: BroadbandMeter,
    onPoint: (point: LevelPoint) => void,
  ): void {
    for (; this.#nextPoint + POINT_HALF < readyIndex; this.#nextPoint += POINT_STEP) {
      this.#pointAt(this.#nextPoint, offsetHz, broadband, onPoint);
    }
  }

  #pointAt(
    index: number,
    offsetHz: number,
    broadband: BroadbandMeter,
    onPoint: (point: LevelPoint) => void,
  ): void {
    const { rateHz, bandwidthHz, re: seriesRe, im: seriesIm, flanks } = this.#series;
    const { near } = flanks;
    const timeS = index / rateHz;
    const halfS = POINT_HALF / rateHz;
    const turn = (-2 * Math.PI * offsetHz) / rateHz;
    let band = 0;
    let re = 0;
    let im = 0;
    let noise = 0;
    const count = 2 * POINT_HALF;
    for (let k = index - POINT_HALF; k < index + POINT_HALF; k += 1) {
      const x = seriesRe[k];
      const y = seriesIm[k];
      const cos = Math.cos(turn * k);
      const sin = Math.sin(turn * k);
      band += (x * x + y * y) / count;
      re += (x * cos - y * sin) / count;
      im += (x * sin + y * cos) / count;
      if (flanks.length > 0) noise += near[flanks.frameAt(k)] / count;
    }
    this.#band.meanSquare = band;
    this.#followRoom(index);
    const bandHz = Math.min(bandwidthHz, rateHz / count);
    const roomPower = (this.#room.density ?? 0) * bandHz;
    this.#coherentMeanSquare = re * re + im * im + 1e-20;
    const tonePower = this.#coherentMeanSquare - noise * bandHz;
    const localNoise = flanks.length === 0 ? 0 : near[flanks.frameAt(index)] * bandHz;
    this.#toneHeard = tonePower > HEARD * Math.max(roomPower, localNoise);
    const firstFrame = broadband.frameAt(timeS - halfS);
    const lastFrame = broadband.frameAt(timeS + halfS);
    const roomDb = levelDb(roomPower / 2 + 1e-20);
    const toneDb = this.#toneHeard ? levelDb(tonePower / 2) : null;
    const broadbandDb = levelDb(broadband.meanSquare(firstFrame, lastFrame) + 1e-20);
    const riseDb = toneDb === null ? null : toneDb - roomDb;
    onPoint({ timeS, toneDb, roomDb, broadbandDb, riseDb });
  }

  #followRoom(index: number): void {
    const { flanks } = this.#series;
    const end = Math.min(flanks.length, Math.floor(index / VALUES_PER_FRAME) + 1);
    for (; this.#flanksSeen < end; this.#flanksSeen += 1) {
      this.#room.push(flanks, this.#flanksSeen, this.#band, this.#toneHeard);
    }
  }
}
