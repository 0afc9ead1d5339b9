/** What is drawn in the column. */
export interface Drawn {
  readonly wave: 'pressure' | 'displacement' | 'none';
  readonly expected: boolean;
}
