import type { LaterWords } from '../catalogue.ts';

export const lessonFault: LaterWords['lessonFault'] = {
  taskTooLong: (length, longest) =>
    `La tarea tiene ${length} caracteres; en un enlace de la clase caben ${longest} como máximo. Acórtala.`,
  linkTooLong: (forks, longest) =>
    `Con ${forks} diapasones el enlace pasaría de los ${longest} caracteres permitidos. Quita diapasones o acorta la tarea.`,
};
