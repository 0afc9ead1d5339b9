import type { FirstWords } from '../catalogue.ts';

export const experimentTitle: FirstWords['experimentTitle'] = {
  kinds: { experiment: 'Experimento', lesson: 'Aula' },
  numbered: (title, number) => `${title} ${number}`,
  copy: (title) => `${title} (cópia)`,
  numberedCopy: (title, number) => `${title} (cópia ${number})`,
};
