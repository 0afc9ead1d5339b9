import type { LaterWords } from '../catalogue.ts';
import { counted, ordinal, plural } from './grammar.ts';

export const sweep: LaterWords['sweep'] = {
  order: (order) => ordinal(order),
  noOrder: 'keine',
  outlier: 'Ausreißer',
  basis: (resonances, factor, endMm) =>
    `95\u00a0%, k = ${factor}, aus ${counted(resonances, 'Resonanz', 'Resonanzen')}. Die Mündungskorrektur von ${endMm}\u00a0mm ist berechnet: Mit nur einer Länge lässt sie sich nicht messen.`,
  wallsCorrected: 'Dass die Wand die Welle bremst, ist berücksichtigt.',
  noDiameter:
    'Notiere den Durchmesser des Rohrs: Ohne ihn ist die Mündungskorrektur nur geschätzt, und die Bremsung durch die Wand ist nicht berücksichtigt.',
  lost: (seconds) => `${seconds}\u00a0s Ton gingen verloren.`,
  lostMoment: 'Der Ton brach kurz ab.',
  noneNear: 'Keine Resonanz lag in der Nähe.',
  nearLost: (resonances, hertz) =>
    `${plural(resonances, 'Die Resonanz', 'Die Resonanzen')} bei etwa ${hertz}\u00a0Hz ${plural(resonances, 'wird', 'werden')} nicht benutzt. Schließ andere Programme und wiederhole den Sweep.`,
  note: (cm, list, speed) => `Sweep bei ${cm}\u00a0cm: ${list}; Geschwindigkeit ${speed}.`,
  found: (order, frequency) => `${ordinal(order)} Ordnung ${frequency}`,
  remarks: {
    practice: 'An der Übungssäule simuliert.',
    unproven: 'Der Pegel wurde nicht geprüft.',
    doubtful: 'Der Pegel ist zweifelhaft.',
  },
  endsBelowStart: 'Der Sweep muss bei einer höheren Frequenz enden, als er beginnt.',
  beyondTheory: (mm, highestHz, toHz) =>
    `Die Übung kann den Sweep bei einem Rohr von ${mm}\u00a0mm nur bis ${highestHz}\u00a0Hz führen, nicht bis ${toHz}\u00a0Hz: Darüber gibt es für das offene Ende keine Theorie. Beende den Sweep früher, oder nimm ein engeres Rohr.`,
};
