import type { MouthShape } from '../../air/mouth.ts';

/** What each mouth is called within a sentence. */
export const mouthNames = {
  'thin-rim': 'thin rim',
  'thick-rim': 'thick rim',
  flange: 'flange',
  obstructed: 'something close to the mouth',
  ideal: 'ideal',
} satisfies Readonly<Record<MouthShape, string>>;

/** The mouth in the report's list of apparatus. */
export const mouthFacts = {
  notDescribed: 'mouth not described',
  ideal: 'no end correction, as in exercises',
  mouth: (name: string) => `mouth: ${name}`,
};
