/** Every step from lengths to the speed. */
export const workingWords = {
  heading: 'Working',
  empty: 'Each step appears here with its numbers as soon as one mark has its length.',
  lead: 'So that you can follow every step by hand.',
} as const;

/** Where the uncertainty comes from. */
export const budgetWords = {
  region: 'Uncertainty budget',
  heading: 'Where the uncertainty comes from',
  columns: {
    quantity: 'Quantity',
    uncertainty: 'Standard uncertainty',
    contribution: 'Adds to the speed',
    share: 'Share',
  },
} as const;

/** The fit line and what it leaves over. */
export const fitWords = {
  heading: 'Fit',
  lead: 'The slope is the speed in the tube; the start below zero is the end correction.',
} as const;

/** Which further mark would make the result more certain. */
export const nextMarksWords = {
  heading: 'What next',
  lead: 'Marks that would take most away from the uncertainty, with the forks you have.',
  none: 'Mark one resonance with its length first.',
} as const;
