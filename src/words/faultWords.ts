/** A fault in two parts, for where only the first has room. */
export interface FaultWords {
  /** What is wrong, in one sentence. */
  readonly what: string;
  /** What to do, in whole sentences; empty where there is nothing. */
  readonly advice: string;
}

/** Both parts after each other. */
export function inFull({ what, advice }: FaultWords): string {
  return advice === '' ? what : `${what} ${advice}`;
}
