import { counted } from '../grammar.ts';

export const handIn = {
  heading: 'Hand in',
  lead: 'The marks that count, the apparatus and the group’s name as a code on this screen: your teacher reads it with a phone, a tablet or the class view. Nothing is sent.',
  none: 'There is no mark with a length yet.',
  unnamed: 'Your group has no name yet: give it one under “This experiment”.',
  show: 'Show the code',
  hide: 'Put the code away',
  codeName: 'this group’s result',
  holds: (group: string, marks: number) =>
    `${group}, ${counted(marks, 'mark')}. No notes, no sound, nobody’s name but the group’s.`,
  link: 'The same as a link',
};
