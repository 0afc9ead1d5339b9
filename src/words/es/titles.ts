import type { FirstWords } from '../catalogue.ts';

export const experimentTitle: FirstWords['experimentTitle'] = {
  kinds: { experiment: 'Experimento', lesson: 'Clase' },
  numbered: (title, number) => `${title} ${number}`,
  copy: (title) => `${title} (copia)`,
  numberedCopy: (title, number) => `${title} (copia ${number})`,
};
