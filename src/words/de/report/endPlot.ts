import type { LaterWords } from '../../catalogue.ts';

export const endPlot: LaterWords['endPlot'] = {
  title: 'Mündungskorrektur über dem Durchmesser',
  x: 'Innendurchmesser des Rohrs, mm',
  y: 'Mündungskorrektur, mm',
  line: (slope, uncertainty) =>
    `Die Gerade durch die Rohre hat die Steigung ${slope} ± ${uncertainty} (95\u00a0%).`,
  tube: (diameterMm, endMm) => `${diameterMm}\u00a0mm: ${endMm}\u00a0mm`,
  tubes: (list) => `${list}.`,
  noTube: 'Noch kein Rohr mit gemessener Mündungskorrektur.',
  anotherTube:
    'Ein Rohr mit anderem Durchmesser ergibt die Gerade. Beginn dafür ein neues Experiment, unter Ablage.',
  theory: (slope) =>
    `Die gestrichelte Gerade ist die Theorie für einen dünnen Rand, mit der Steigung ${slope}.`,
};
