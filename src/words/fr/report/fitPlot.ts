import type { LaterWords } from '../../catalogue.ts';
import { counted, ordinal } from '../grammar.ts';

export const fitPlot: LaterWords['fitPlot'] = {
  title: 'Longueur en fonction du temps de parcours du son',
  x: 'demi-longueurs d’onde ÷ (2 × fréquence), ms',
  y: 'longueur, cm',
  label: (order, hertz) => `${ordinal(order)}, ${hertz}\u00a0Hz`,
  shows: (marks, endMm) =>
    `${counted(marks, 'repère', 'repères')}. La pente de la droite est la vitesse. Son ordonnée à l’origine est négative\u00a0: c’est l’opposé de la correction d’extrémité, ${endMm}\u00a0mm, ou de son double pour une colonne ouverte.`,
};

export const residualPlot: LaterWords['residualPlot'] = {
  title: 'Écarts à l’ajustement',
  x: 'longueur, cm',
  y: 'mesurée − ajustée, mm',
  residual: (cm, mm) => `${mm}\u00a0mm à ${cm}\u00a0cm`,
  residuals: (list) => `Longueur mesurée moins longueur ajustée\u00a0: ${list}.`,
  noOutliers: 'Les valeurs aberrantes ne sont pas montrées.',
};
