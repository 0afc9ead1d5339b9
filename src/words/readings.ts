import { words } from './inUse.ts';
import { fixed, fullCentimetres } from './numbers.ts';

/** A reading or both of a bracket as a person writes them, cm: to the millimetre, and in full where it is finer. */
export function readingWords(lengthM: number, otherLengthM: number | null): string {
  const first = atLeastMillimetres(lengthM);
  return otherLengthM === null ? first : `${first}–${atLeastMillimetres(otherLengthM)}`;
}

function atLeastMillimetres(lengthM: number): string {
  const full = fullCentimetres(lengthM);
  return full === fixed(lengthM * 100, 0) ? fixed(lengthM * 100, 1) : full;
}

/** Before a reading is taken that the tube is too short for, m. */
export function beyondTubeWords(readingM: number, travelM: number): string {
  return words.reading.beyondTube(fullCentimetres(readingM), fullCentimetres(travelM));
}
