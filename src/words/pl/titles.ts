import type { FirstWords } from '../catalogue.ts';

export const experimentTitle: FirstWords['experimentTitle'] = {
  kinds: { experiment: 'Doświadczenie', lesson: 'Lekcja' },
  numbered: (title, number) => `${title} ${number}`,
  copy: (title) => `${title} (kopia)`,
  numberedCopy: (title, number) => `${title} (kopia ${number})`,
};
