import type { LaterWords } from '../catalogue.ts';

export const lessonFault: LaterWords['lessonFault'] = {
  taskTooLong: (length, longest) =>
    `Die Aufgabe hat ${length} Zeichen; in einen Stundenlink passen höchstens ${longest}. Kürze sie.`,
  linkTooLong: (forks, longest) =>
    `Mit ${forks} Gabeln wäre der Link länger als die erlaubten ${longest} Zeichen. Entferne Gabeln, oder kürze die Aufgabe.`,
};
