/** Blocks (20 ms each) of which the quietest make one value of the floor: half a second. */
const BLOCKS = 24;
/** The quietest but one: a single short gap in the sound is no floor. */
const RANK = 1;
/** Values from which the room's baseline is taken: the first five seconds of sound. */
const BASELINE_VALUES = 10;
/** A fall below the baseline that no room's own ups and downs make while people talk, dB. A judgement. */
const FELL_DB = 10;
/** Of the last values so many must lie below: ten seconds and two. */
const KEPT_VALUES = 20;
const LEAST_VALUES = 4;
/** Less than the steps of 16 bits is silence that nobody made. */
const SILENT = 1e-11;

/**
 * Watches the quiet moments of the sound's upper end. A room's noise is there all the time: where the floor falls
 * far below what the first seconds showed, a suppression of noise has set in, or the room became quiet.
 */
export class FloorWatch {
  private blocks: number[] = [];
  private readonly recentDb: number[] = [];
  private baselineDb: number | null = null;
  private values = 0;

  /** Takes in a block. @param slopeMeanSquare  mean square of the differences between its neighbouring samples, >= 0 */
  take(slopeMeanSquare: number): void {
    if (slopeMeanSquare < SILENT) return;
    this.blocks.push(slopeMeanSquare);
    if (this.blocks.length < BLOCKS) return;
    const quiet = this.blocks.sort((a, b) => a - b)[RANK];
    const floorDb = 10 * Math.log10(quiet);
    this.blocks = [];
    this.values += 1;
    if (this.values <= BASELINE_VALUES) {
      this.baselineDb = Math.min(this.baselineDb ?? floorDb, floorDb);
      return;
    }
    this.recentDb.push(floorDb);
    if (this.recentDb.length > KEPT_VALUES) this.recentDb.shift();
  }

  /** How far the floor of the last seconds lies below the baseline, dB, >= 0; null while it does not. */
  get fallDb(): number | null {
    const baselineDb = this.baselineDb;
    if (baselineDb === null) return null;
    const fallsDb = this.recentDb.map((floorDb) => baselineDb - floorDb);
    const below = fallsDb.filter((fallDb) => fallDb > FELL_DB).length;
    return below < LEAST_VALUES ? null : Math.max(...fallsDb);
  }
}
