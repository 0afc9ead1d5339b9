import type { ColumnAtPitch } from './column.ts';
import type { PerformedTone } from './performance.ts';

/** The level peaked because the tube's length passed through (or turned back near) a resonance. */
export interface Passage {
  /**
   * When the column's gain peaks, its ringing up included, wobble and dying left out: the middle of the time within
   * 0.3 dB of the peak, since a tube that rests at the maximum has no one moment.
   */
  readonly timeS: number;
  /** Half-power moments; -3 dB, or half of the prominence where that is less. */
  readonly fromS: number;
  readonly toS: number;
  /** Gain over the direct sound at the peak, dB. */
  readonly riseDb: number;
  /** Peak minus the higher of the two minima beside it within the visit to the mouth, dB. */
  readonly prominenceDb: number;
  /** Half of the time between the half-power moments. */
  readonly halfWidthS: number;
  readonly order: number;
  readonly lengthM: number;
  /** The tone's power at the peak over the room's noise in 10 Hz at the fork's pitch, dB. */
  readonly aboveNoiseDb: number;
  /** To be found: loud enough, high enough and complete. Others count neither as hit nor as false alarm. */
  readonly audible: boolean;
}

const STEP_HZ = 200;

/**
 * Finds the passages in what the column did.
 * @param lengthM  at the envelope's rate
 * @param noisePower  mean power of all else in 10 Hz at the fork's pitch around a time
 */
export function findPassages(
  column: ColumnAtPitch,
  tone: PerformedTone,
  lengthM: Float64Array,
  noisePower: (timeS: number) => number,
): Passage[] {
  const every = Math.round(tone.envelope.rateHz / STEP_HZ);
  const rate = tone.envelope.rateHz / every;
  const count = Math.floor(lengthM.length / every);
  const at = (series: Float64Array | Uint8Array, i: number): number => series[i * every];
  const passages: Passage[] = [];
  let first = -1;
  for (let i = 0; i <= count; i += 1) {
    const present = i < count && at(tone.coupling, i) > 0.6 && at(tone.sounding, i) > 0;
    if (present && first < 0) first = i;
    if (present || first < 0) continue;
    const gain = Array.from({ length: i - first }, (_, j) => at(tone.columnGainDb, first + j));
    for (const peak of peaks(gain)) {
      const index = first + peak.index;
      const length = at(lengthM, index);
      const order = column.nearestOrder(length);
      const rise = gain[peak.index];
      const complete = peak.prominence >= 3 && !peak.edge;
      // Ringing up takes time, so after a fast slide the tube is already beyond the resonance at the peak.
      let nearest = Infinity;
      for (let k = Math.max(0, index - Math.round(0.25 * rate)); k <= index; k += 1) {
        nearest = Math.min(nearest, Math.abs(at(lengthM, k) - column.resonantLengthM(order)));
      }
      const full = nearest < 1.5 * column.halfWidthM(order);
      let power = 0;
      const around = Math.round(0.03 * tone.envelope.rateHz);
      const centre = index * every;
      for (let k = centre - around; k <= centre + around; k += 1) {
        power += (tone.envelope.re[k] ?? 0) ** 2 + (tone.envelope.im[k] ?? 0) ** 2;
      }
      power /= 2 * (2 * around + 1);
      const aboveNoiseDb = 10 * Math.log10((power + 1e-20) / (noisePower(index / rate) + 1e-20));
      const [from, to] = halfPower(gain, peak.index, Math.min(3, peak.prominence / 2));
      const [topFrom, topTo] = halfPower(gain, peak.index, 0.3);
      passages.push({
        timeS: (first + (topFrom + topTo) / 2) / rate,
        fromS: (first + from) / rate,
        toS: (first + to) / rate,
        riseDb: rise,
        prominenceDb: peak.prominence,
        halfWidthS: (to - from) / (2 * rate),
        order,
        lengthM: length,
        aboveNoiseDb,
        audible: complete && full && rise >= 3 && aboveNoiseDb >= 10 && at(tone.facing, index) > 0.6,
      });
    }
    first = -1;
  }
  return passages.map((passage) => ({
    ...passage,
    audible: passage.audible && !passages.some((other) => isEchoOf(passage, other)),
  }));
}

/** After a fast slide the column's ringing beats with the drive: ripples that follow one passage. */
function isEchoOf(passage: Passage, other: Passage): boolean {
  return (
    other.riseDb > passage.riseDb &&
    other.order === passage.order &&
    Math.abs(other.timeS - passage.timeS) < 0.3
  );
}

/** Maxima of at least 1 dB; those at an edge (the fork came or went half way through) too. */
function peaks(gain: readonly number[]): { index: number; prominence: number; edge: boolean }[] {
  const found: { index: number; prominence: number; edge: boolean }[] = [];
  for (let i = 0; i < gain.length; i += 1) {
    const here = gain[i];
    if (here < 1 || (gain[i - 1] ?? -Infinity) > here || (gain[i + 1] ?? -Infinity) >= here) continue;
    let left = here;
    let j = i - 1;
    for (; j >= 0 && gain[j] <= here; j -= 1) left = Math.min(left, gain[j]);
    let right = here;
    let k = i + 1;
    for (; k < gain.length && gain[k] < here; k += 1) right = Math.min(right, gain[k]);
    const edge = i < 4 || i > gain.length - 5;
    const prominence = edge ? here - Math.min(left, right) : here - Math.max(left, right);
    if (prominence >= 1) found.push({ index: i, prominence, edge });
  }
  return found;
}

function halfPower(gain: readonly number[], index: number, drop: number): [number, number] {
  const limit = gain[index] - drop;
  let from = index;
  while (from > 0 && gain[from] > limit) from -= 1;
  let to = index;
  while (to < gain.length - 1 && gain[to] > limit) to += 1;
  return [from, to];
}
