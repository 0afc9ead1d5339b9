import { fixed } from './rounding.ts';

/** A size for a person, in megabytes of 10⁶ bytes with one decimal. @param bytes  >= 0 */
export function megabytes(bytes: number): string {
  return `${fixed(bytes / 1e6, 1)} MB`;
}
