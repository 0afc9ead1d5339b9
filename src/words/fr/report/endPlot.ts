import type { LaterWords } from '../../catalogue.ts';

export const endPlot: LaterWords['endPlot'] = {
  title: 'Correction d’extrémité en fonction du diamètre',
  x: 'diamètre intérieur du tube, mm',
  y: 'correction d’extrémité, mm',
  line: (slope, uncertainty) =>
    `La droite qui passe par les tubes monte de (${slope} ± ${uncertainty}) fois le diamètre (95\u00a0%).`,
  tube: (diameterMm, endMm) => `${diameterMm}\u00a0mm\u00a0: ${endMm}\u00a0mm`,
  tubes: (list) => `${list}.`,
  noTube: 'Aucun tube n’a encore de correction d’extrémité mesurée.',
  anotherTube:
    'Un tube d’un autre diamètre donnera la droite. Commencez pour lui une nouvelle expérience, sous Dossiers.',
  theory: (slope) => `La droite en tirets est la théorie pour un bord mince, ${slope} fois le diamètre.`,
};
