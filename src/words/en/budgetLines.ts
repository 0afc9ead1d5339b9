import type { Distribution } from '../../solver/solution.ts';
import { counted } from './grammar.ts';

/** What the columns of the budget are called. */
export const budgetColumns = {
  quantity: 'Quantity',
  uncertainty: 'Standard uncertainty',
  evaluation: 'Type',
  distribution: 'Distribution',
  sensitivity: 'Sensitivity',
  contribution: 'Adds to the speed',
  degrees: 'Degrees of freedom',
  share: 'Share',
};

/** Lines of the budget, and what belongs to it beside them. */
export const budgetLine = {
  reading: 'Lengths: reading and finding the resonance',
  readingWidened: 'Lengths: reading and finding the resonance, corrected by their scatter',
  fork: (hertz: string) => `Frequency of the ${hertz} Hz fork`,
  loudest: 'Loudest place beside the resonance',
  zero: 'Zero of the rule',
  scale: 'Scale of the rule',
  endOfMouth: 'End correction as known of the mouth, over the radius',
  endOfTubes: 'End correction as tubes usually have it',
  wall: 'Slowing by the walls',
  wallLeft: 'Slowing by the walls, not removed',
  distributions: {
    normal: 'normal',
    rectangular: 'rectangular',
    arcsine: 'arcsine',
  } satisfies Readonly<Record<Distribution, string>>,
  /** What the letters in the column Type mean. */
  types:
    'Type A: from the scatter of the lengths. Type B: from what else is known, such as a stamp or an instrument. Sensitivity: m/s by which the speed changes for one unit of the quantity. (JCGM 100:2008, 4.2, 4.3 and 5.1)',
  perMillimetre: (mps: string) => `${mps} m/s per mm`,
  perHertz: (mps: string) => `${mps} m/s per Hz`,
  correlation: 'Correlation of speed and end correction',
  degrees: 'Effective degrees of freedom',
  degreesBy: (degrees: string) => `ν = ${degrees}, by Welch and Satterthwaite`,
  repeatability: 'Repeatability of one reading',
  repeatabilityFrom: (millimetres: string, degrees: number) =>
    `s = ${millimetres} mm, Type A, from ${counted(degrees, 'degree')} of freedom`,
};
