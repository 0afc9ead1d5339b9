import type { LaterWords } from '../catalogue.ts';

export const lessonFault: LaterWords['lessonFault'] = {
  taskTooLong: (length, longest) =>
    `A tarefa tem ${length} caracteres; em um link da aula cabem no máximo ${longest}. Encurte-a.`,
  linkTooLong: (forks, longest) =>
    `Com ${forks} diapasões o link passaria dos ${longest} caracteres permitidos. Remova diapasões ou encurte a tarefa.`,
};
