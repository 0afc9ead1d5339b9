import type { FirstWords } from '../catalogue.ts';

export const experimentTitle: FirstWords['experimentTitle'] = {
  kinds: { experiment: 'Expérience', lesson: 'Séance' },
  numbered: (title, number) => `${title} ${number}`,
  copy: (title) => `${title} (copie)`,
  numberedCopy: (title, number) => `${title} (copie ${number})`,
};
