import { fullCentimetres } from './numbers.ts';

/** A reading or both of a bracket as a person writes them, cm: to the millimetre, and in full where it is finer. */
export function readingWords(lengthM: number, otherLengthM: number | null): string {
  const first = atLeastMillimetres(lengthM);
  return otherLengthM === null ? first : `${first}–${atLeastMillimetres(otherLengthM)}`;
}

function atLeastMillimetres(lengthM: number): string {
  const text = fullCentimetres(lengthM);
  return text.includes('.') ? text : `${text}.0`;
}

/** Before a reading is taken that the tube is too short for, m. */
export function beyondTubeWords(readingM: number, travelM: number): string {
  return `${fullCentimetres(readingM)} cm is longer than the tube (${fullCentimetres(travelM)} cm). If it is right, the longest column under Apparatus isn’t.`;
}
