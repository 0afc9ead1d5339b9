import type { FirstWords } from '../../catalogue.ts';

export const lengthAnswer: FirstWords['lengthAnswer'] = {
  listening: 'Hört zu',
  how: 'Schlag die Gabel an. Halte sie zwei Sekunden an die Mündung, zwei weg und so weiter, dreimal.',
  verdicts: {
    resonant: 'Resonanz',
    'not-resonant': 'Keine Resonanz',
    'cannot-tell': 'Noch nicht zu sagen',
  },
  fewChanges: (comparisons) =>
    `Die Gabel kam bisher ${comparisons}-mal an die Mündung oder ging weg; mindestens dreimal ist nötig.`,
  hindrances: {
    'no-fork': 'Noch ist keine Gabel zu hören. Schlag sie an und halte sie an die Mündung.',
    'lost-sound': 'Inzwischen ging Ton verloren: Schließ andere Programme und beginne von vorn.',
    noise:
      'Der Raum ist für einen Vergleich zu laut neben der Gabel. Schlag stärker an, halte die Gabel näher hin, oder warte, bis es ruhiger ist.',
    unsteady:
      'Der Pegel ändert sich auch anders. Lass die Säule, wie sie ist, und halte die Gabel an jeder ihrer beiden Stellen still.',
  },
  rise: (riseDb, uncertaintyDb, comparisons) =>
    `An der Mündung ist die Gabel um ${riseDb} ± ${uncertaintyDb}\u00a0dB lauter (95\u00a0%), ${comparisons}-mal verglichen.`,
};
