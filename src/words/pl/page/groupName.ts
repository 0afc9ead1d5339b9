import type { FirstWords } from '../../catalogue.ts';

export const groupName: FirstWords['groupName'] = {
  ask: 'Nazwa waszej grupy',
  take: 'Użyj',
  later: 'Później',
  taken: (group) =>
    `W plikach, sprawozdaniu i klasie wasza grupa to teraz „${group}”. Nazwę można zmienić w widoku Archiwum.`,
};
