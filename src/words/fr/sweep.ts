import type { LaterWords } from '../catalogue.ts';
import { counted, ordinal, plural } from './grammar.ts';

export const sweep: LaterWords['sweep'] = {
  order: (order) => `${order}`,
  noOrder: 'aucun',
  outlier: 'valeur aberrante',
  basis: (resonances, factor, endMm) =>
    `95\u00a0%, k = ${factor}, d’après ${counted(resonances, 'résonance', 'résonances')}. La correction d’extrémité de ${endMm}\u00a0mm est prévue\u00a0: une seule longueur ne permet pas de la mesurer.`,
  wallsCorrected: 'Le ralentissement de l’onde par la paroi est corrigé.',
  noDiameter:
    'Notez le diamètre du tube : sans lui, la correction d’extrémité n’est que supposée, et le ralentissement dû à la paroi n’est pas corrigé.',
  lost: (seconds) => `${seconds}\u00a0s de son ont été perdues.`,
  lostMoment: 'Le son s’est interrompu un instant.',
  noneNear: 'Aucune résonance n’était proche.',
  nearLost: (resonances, hertz) =>
    `${plural(resonances, 'La résonance proche', 'Les résonances proches')} de ${hertz}\u00a0Hz ${plural(resonances, 'n’est pas utilisée', 'ne sont pas utilisées')}. Fermez les autres programmes et refaites le balayage.`,
  note: (cm, list, speed) => `Balayage à ${cm}\u00a0cm\u00a0: ${list}\u00a0; vitesse ${speed}.`,
  found: (order, frequency) => `${ordinal(order)} résonance ${frequency}`,
  remarks: {
    practice: 'Simulé sur la colonne d’entraînement.',
    unproven: 'Le niveau n’a pas été contrôlé.',
    doubtful: 'Le niveau est douteux.',
  },
  endsBelowStart: 'Le balayage doit finir à une fréquence plus haute que celle du début.',
  beyondTheory: (mm, highestHz, toHz) =>
    `À l’entraînement, un tube de ${mm}\u00a0mm peut être balayé jusqu’à ${highestHz}\u00a0Hz, pas jusqu’à ${toHz}\u00a0Hz\u00a0: au-delà, il n’y a pas de théorie pour son extrémité ouverte. Finissez plus bas, ou prenez un tube plus étroit.`,
};
