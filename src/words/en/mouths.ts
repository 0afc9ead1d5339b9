import type { MouthShape } from '../../air/mouth.ts';

/** What each mouth is called within a sentence. */
export const mouthNames = {
  'thin-rim': 'thin rim',
  'thick-rim': 'thick rim',
  flange: 'flange',
  obstructed: 'something close to the mouth',
  ideal: 'ideal',
} satisfies Readonly<Record<MouthShape, string>>;
