import { ordinal } from '../grammar.ts';

/** What is written into the picture and on its handle. */
export const columnLabels = {
  handle: 'Length of the column',
  reading: (centimetres: string) => `${centimetres} cm on the rule`,
  notSet: 'not set',
  unit: 'cm',
  /** The letters of a node and of an antinode. */
  node: 'N',
  antinode: 'A',
  /** Order and length at a mark. A full stop after the number would look odd before a dot. */
  resonance: (order: number, centimetres: string) => `${ordinal(order)} · ${centimetres}`,
};

/** The picture in words. */
export const columnSpoken = {
  column: { closed: 'Air column closed at one end.', open: 'Air column open at both ends.' },
  drawnAt: (centimetres: string) => `It is drawn at ${centimetres} cm on the rule.`,
  noMarks: 'No marks on the rule yet.',
  /** @param marks  as below, a list */
  marks: (marks: string) => `Marks: ${marks}.`,
  /** The first ones of very many. */
  marksAndMore: (marks: string, more: number) => `Marks: ${marks} and ${more} more.`,
  mark: (centimetres: string) => `at ${centimetres} cm`,
  perhapsMark: (centimetres: string) => `perhaps at ${centimetres} cm`,
  resonance: (order: number, centimetres: string) => `${ordinal(order)} resonance at ${centimetres} cm`,
  perhapsResonance: (order: number, centimetres: string) =>
    `perhaps ${ordinal(order)} resonance at ${centimetres} cm`,
};
