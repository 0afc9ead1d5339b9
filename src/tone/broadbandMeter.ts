import Meyda from 'meyda';
import { ANALYSIS_BLOCK } from '../capture/signal/analysisBlock.ts';

/** Blocks that are kept: two seconds and more, far longer than a level point waits. */
const KEPT = 128;

/** Meyda.extract would window and transform every block; its rms alone needs neither. */
const { rms } = Meyda.featureExtractors as {
  rms: (block: { readonly signal: Float32Array }) => number;
};

/**
 * The whole sound's level, for comparison with the level at the fork's frequency: mean squares of analysis blocks, of
 * which the newest are kept.
 */
export class BroadbandMeter {
  private readonly blockS: number;
  /** A ring: block k at k % KEPT. */
  private readonly meanSquares = new Float64Array(KEPT);
  private blocks = 0;

  constructor(sampleRateHz: number) {
    this.blockS = ANALYSIS_BLOCK / sampleRateHz;
  }

  /** @param block  the next ANALYSIS_BLOCK samples */
  push(block: Float32Array): void {
    this.meanSquares[this.blocks % KEPT] = rms({ signal: block }) ** 2;
    this.blocks += 1;
  }

  /** Mean square, full scale 1, of the blocks that a stretch of time touches, as far as they are kept; 0 of none. */
  meanSquare(fromS: number, toS: number): number {
    const first = Math.max(0, this.blocks - KEPT, Math.floor(fromS / this.blockS));
    const end = Math.min(this.blocks, Math.floor(toS / this.blockS) + 1);
    let sum = 0;
    for (let i = first; i < end; i += 1) sum += this.meanSquares[i % KEPT];
    return sum / Math.max(1, end - first);
  }
}
