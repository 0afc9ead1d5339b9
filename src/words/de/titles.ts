import type { FirstWords } from '../catalogue.ts';

export const experimentTitle: FirstWords['experimentTitle'] = {
  kinds: { experiment: 'Experiment', lesson: 'Unterrichtsstunde' },
  numbered: (title, number) => `${title} ${number}`,
  copy: (title) => `${title} (Kopie)`,
  numberedCopy: (title, number) => `${title} (Kopie ${number})`,
};
