import type { FirstWords } from '../catalogue.ts';

export const placeName: FirstWords['placeName'] = {
  usual: 'Labor',
  practice: 'Übungssäule',
};
