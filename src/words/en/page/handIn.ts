import { counted } from '../grammar.ts';

export const handIn = {
  heading: 'Hand in',
  lead: 'Shows a code with the marks that count, the apparatus and the group’s name. Your teacher reads it from this screen with a phone, a tablet or the class view. Nothing is sent.',
  none: 'No mark has a length yet.',
  unnamed: 'Your group has no name yet. Enter one under “This experiment”.',
  show: 'Show the code',
  hide: 'Hide the code',
  codeName: 'this group’s result',
  holds: (group: string, marks: number) =>
    `${group}: ${counted(marks, 'mark')}. The code holds no notes, no sound and no name but the group’s.`,
  link: 'The same as a link',
};
