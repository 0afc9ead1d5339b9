import { fixed } from '../../numbers.ts';

/** Every step from lengths to the speed. */
export const working = {
  heading: 'Working',
  empty: 'Each step appears here with its numbers as soon as one mark has its length.',
  lead: 'So that you can follow every step by hand.',
};

/** Where the uncertainty comes from. */
export const budget = {
  region: 'Uncertainty budget',
  heading: 'Where the uncertainty comes from',
  table: 'Lines of the budget',
};

/** The fit line and what it leaves over. */
export const fit = {
  heading: 'Fit',
  lead: 'The slope is the speed in the tube; the start below zero is the end correction.',
};

/** Which further mark would make the result more certain. */
export const nextMarks = {
  heading: 'What next',
  lead: 'Marks that would take most away from the uncertainty, with the forks you have.',
  none: 'Mark one resonance with its length first.',
};

/** Why ear and level don't find the resonance itself. */
export const circle = {
  heading: 'Why the loudest place is not the resonance',
  lead: 'The microphone hears two sounds of one pitch: the fork’s own and the column’s. The column’s turns in phase as the length passes resonance, so their sum runs round a circle. The resonance lies opposite the fork’s own sound; the loudest place is the point farthest from zero.',
  mark: 'Resonance of',
  own: (name: string) => `This is the circle of ${name}, as it was heard.`,
  example:
    'An example, not yet yours: a column’s sound 1.5 times the fork’s own, 60° ahead of it. Slide past a resonance while the bench listens: its mark brings your own circle.',
  /** @param offsetM  the same in metres; null where order, tube or fork isn't known */
  offset: (halfWidths: number, offsetM: number | null, louderDb: number) => {
    const size = fixed(Math.abs(halfWidths), 2);
    const mm = offsetM === null ? '' : ` (${fixed(Math.abs(offsetM) * 1000, 1)} mm)`;
    const side = halfWidths > 0 ? 'too long' : 'too short';
    return `The loudest place lies ${size} half widths${mm} beside the resonance and is ${fixed(louderDb, 1)} dB louder: a column that is read there is ${side}.`;
  },
  alike: 'Here the loudest place and the resonance are the same: both sounds are in step.',
  nowhere: 'Here the column’s sound only takes away from the fork’s own: no place is loudest.',
  noMillimetres: 'In millimetres, too, once the tube’s diameter and the resonance’s order are known.',
  stays:
    'While fork, hand and microphone stay as they are, this goes to the same side at every resonance: repeating doesn’t average it out. Reading at the bench’s “Here” avoids it.',
};
