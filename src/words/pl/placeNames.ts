import type { FirstWords } from '../catalogue.ts';

export const placeName: FirstWords['placeName'] = {
  usual: 'Pracownia',
  practice: 'Słup do ćwiczeń',
};
