import type { LaterWords } from '../../catalogue.ts';
import { counted, ordinal } from '../grammar.ts';

export const fitPlot: LaterWords['fitPlot'] = {
  title: 'Longueur en fonction du temps que met le son à parcourir la colonne',
  x: 'nombre de demi-longueurs d’onde dans la colonne ÷ (2 × fréquence), ms',
  y: 'longueur, cm',
  label: (order, hertz) => `${ordinal(order)}, ${hertz} Hz`,
  shows: (marks, endMm) =>
    `${counted(marks, 'repère', 'repères')}. La pente de la droite est la vitesse. Son ordonnée à l’origine est négative\u00a0: c’est l’opposé de la correction d’extrémité, ${endMm} mm, ou de son double pour une colonne ouverte.`,
};

export const residualPlot: LaterWords['residualPlot'] = {
  title: 'Écarts à l’ajustement',
  x: 'longueur, cm',
  y: 'mesurée − ajustée, mm',
  residual: (cm, mm) => `${cm} cm\u00a0: ${mm} mm`,
  residuals: (list) => `Longueur mesurée moins longueur ajustée\u00a0: ${list}.`,
  noOutliers: 'Les valeurs aberrantes ne sont pas montrées.',
};
