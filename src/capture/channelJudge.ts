/** Which channel of several is listened to, kept for the whole run. */
export interface ChannelChoice {
  /** 0, 1… */
  readonly channel: number;
  /** Null where there was nothing to choose. */
  readonly reason: ChannelReason | null;
}

/** Why a channel is used and not another one. Channels count from 0. */
export interface ChannelReason {
  readonly channel: number;
  readonly channelCount: number;
  /** What is wrong with others. */
  readonly faults: readonly {
    readonly channel: number;
    readonly fault: 'silent' | 'clips' | 'fell-silent';
  }[];
  /** Where nothing is wrong with the others: whether it is less noisy, or no other is clearly better. */
  readonly isLessNoisy: boolean;
}

/** Frames over which one level is taken: short against talk, long against a period of the lowest fork. */
const FRAME = 1024;
/** Below this mean square a channel carries nothing: about the last bit of 16-bit sound (-96 dB re sine). */
const DEAD_MEAN_SQUARE = 1.3e-10;
/** A sample this near to full scale counts as clipped. */
const CLIP = 0.999;
/** Share of clipped samples from which on a channel is spoilt. */
const SPOILT_SHARE = 1e-4;
/** A channel takes over from the first only when it is clearly better. */
const CLEARLY_DB = 3;
const FLOOR = 1e-14;

interface Tally {
  readonly levelsDb: number[];
  meanSquareSum: number;
  frames: number;
  clipped: number;
}

/**
 * Judges the channels of one stream: a dead one and a clipped one lose; of the rest the one whose quiet
 * moments lie farthest below its loud ones wins, because steady noise of its own lifts only the quiet ones.
 */
export class ChannelJudge {
  private readonly tallies: Tally[];

  /** @param channelCount  >= 1 */
  constructor(channelCount: number) {
    if (!Number.isInteger(channelCount) || channelCount < 1) {
      throw new RangeError(`channelCount must be an integer >= 1, got ${channelCount}`);
    }
    this.tallies = Array.from({ length: channelCount }, () => ({
      levelsDb: [],
      meanSquareSum: 0,
      frames: 0,
      clipped: 0,
    }));
  }

  /** Frames judged so far. */
  get frames(): number {
    return this.tallies.at(0)?.frames ?? 0;
  }

  /** Adds a stretch. @param channels  one array a channel, of one length; a missing channel counts as dead */
  add(channels: readonly Float32Array[]): void {
    this.tallies.forEach((tally, i) =>
      addTo(tally, channels[i] ?? new Float32Array(channels.at(0)?.length ?? 0)),
    );
  }

  /** The channel to keep, from what was added. */
  choose(): ChannelChoice {
    const [only] = this.tallies;
    if (this.tallies.length === 1 || only === undefined || only.frames === 0)
      return { channel: 0, reason: null };
    const scores = this.tallies.map(score);
    let best = 0;
    scores.forEach((value, i) => {
      if (value > (scores[best] ?? 0) + (best === 0 ? CLEARLY_DB : 0)) best = i;
    });
    return { channel: best, reason: this.explain(best) };
  }

  private explain(best: number): ChannelReason {
    const faults = this.tallies.flatMap((tally, channel): ChannelReason['faults'] => {
      if (channel === best) return [];
      if (isDead(tally)) return [{ channel, fault: 'silent' }];
      if (isSpoilt(tally)) return [{ channel, fault: 'clips' }];
      return [];
    });
    return { channel: best, channelCount: this.tallies.length, faults, isLessNoisy: best !== 0 };
  }
}

function addTo(tally: Tally, samples: Float32Array): void {
  for (let start = 0; start < samples.length; start += FRAME) {
    const end = Math.min(start + FRAME, samples.length);
    let sum = 0;
    let power = 0;
    for (let i = start; i < end; i += 1) {
      const sample = samples[i] ?? 0;
      sum += sample;
      power += sample * sample;
      if (sample >= CLIP || sample <= -CLIP) tally.clipped += 1;
    }
    const count = end - start;
    // A constant offset is no sound.
    const meanSquare = Math.max(0, power / count - (sum / count) ** 2);
    tally.meanSquareSum += meanSquare * count;
    tally.frames += count;
    tally.levelsDb.push(10 * Math.log10(meanSquare + FLOOR));
  }
}

function isDead(tally: Tally): boolean {
  return tally.meanSquareSum / tally.frames < DEAD_MEAN_SQUARE;
}

function isSpoilt(tally: Tally): boolean {
  return tally.clipped / tally.frames > SPOILT_SHARE;
}

/** Distance from quiet to loud moments, dB; a spoilt channel lies below every sound one, a dead one below all. */
function score(tally: Tally): number {
  if (isDead(tally)) return -2000;
  const sorted = [...tally.levelsDb].sort((a, b) => a - b);
  const at = (share: number): number => sorted[Math.round(share * (sorted.length - 1))] ?? 0;
  return at(0.95) - at(0.1) - (isSpoilt(tally) ? 1000 : 0);
}
