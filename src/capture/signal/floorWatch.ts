/** Looks (20 ms each) of which the quietest make one value of the floor: half a second. */
const LOOKS = 24;
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
  private readonly looks = new Float64Array(LOOKS);
  private filled = 0;
  private readonly recent: number[] = [];
  private baselineDb: number | null = null;
  private values = 0;

  /** @param look  mean square of the differences between its neighbouring samples, >= 0 */
  take({ slopeMeanSquare }: { readonly slopeMeanSquare: number }): void {
    if (slopeMeanSquare < SILENT) return;
    this.looks[this.filled] = slopeMeanSquare;
    this.filled += 1;
    if (this.filled < LOOKS) return;
    this.looks.sort();
    const floorDb = 10 * Math.log10(this.looks[RANK]);
    this.filled = 0;
    this.values += 1;
    if (this.values <= BASELINE_VALUES) {
      this.baselineDb = Math.min(this.baselineDb ?? floorDb, floorDb);
      return;
    }
    this.recent.push(floorDb);
    if (this.recent.length > KEPT_VALUES) this.recent.shift();
  }

  /** How far the floor of the last seconds lies below the baseline, dB, >= 0; null while it does not. */
  get fallDb(): number | null {
    const { baselineDb } = this;
    if (baselineDb === null) return null;
    let below = 0;
    let mostDb = 0;
    for (let i = 0; i < this.recent.length; i += 1) {
      const fallDb = baselineDb - this.recent[i];
      if (fallDb > FELL_DB) below += 1;
      mostDb = Math.max(mostDb, fallDb);
    }
    return below < LEAST_VALUES ? null : mostDb;
  }
}
