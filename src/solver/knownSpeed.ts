/** A speed that is known otherwise: from other forks, or from theory. */
export interface KnownSpeed {
  readonly speedMps: number;
  readonly standardUncertaintyMps: number;
}
