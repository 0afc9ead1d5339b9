import { fixed } from '../words/numbers.ts';

/** A size for a person, in megabytes of 10⁶ bytes; with one decimal below 10 of them. @param bytes  >= 0 */
export function megabytes(bytes: number): string {
  return `${fixed(bytes / 1e6, bytes < 1e7 ? 1 : 0)} MB`;
}
