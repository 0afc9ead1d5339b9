import type { LaterWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const lessonFault: LaterWords['lessonFault'] = {
  taskTooLong: (length, longest) =>
    `Zadanie ma ${counted(length, 'znak', 'znaki', 'znaków')}; w linku do lekcji mieści się najwyżej ${longest}. Skróć je.`,
  linkTooLong: (forks, longest) =>
    `Liczba kamertonów, ${forks}, jest za duża na jedną lekcję: link byłby dłuższy niż dozwolone ${longest} znaków. Usuń kilka kamertonów albo skróć zadanie.`,
};
