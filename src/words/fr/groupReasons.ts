import type { LaterWords } from '../catalogue.ts';

export const groupReason: LaterWords['groupReason'] = {
  otherFork: (fittingHertz, notedHertz) =>
    `Ses longueurs conviennent à un diapason de ${fittingHertz}\u00a0Hz, mais ${notedHertz}\u00a0Hz est noté. Était-ce un autre diapason\u00a0?`,
  allLong: (centimetres) =>
    `Si la vitesse de la classe est juste, toutes ses longueurs sont trop grandes d’environ ${centimetres}\u00a0cm.`,
  allShort: (centimetres) =>
    `Si la vitesse de la classe est juste, toutes ses longueurs sont trop petites d’environ ${centimetres}\u00a0cm.`,
  checkZero: {
    closed: 'Le zéro de la règle est-il à l’extrémité fermée du tube ? Sinon, indiquez le décalage du zéro.',
    open: 'Le zéro de la règle est-il à l’autre extrémité du tube ? Sinon, indiquez le décalage du zéro.',
    mixed: 'Le zéro de la règle est-il au bout de la colonne ? Sinon, indiquez le décalage du zéro.',
  },
  markOff: (mark, centimetres, cause) => `${mark} (${centimetres}\u00a0cm)\u00a0: ${cause}`,
  allLonger: (percent) =>
    `Ses longueurs s’accordent entre elles, mais toutes sont trop grandes de ${percent}\u00a0% pour la vitesse de la classe. Vérifiez la fréquence du diapason, la règle et la température.`,
  allShorter: (percent) =>
    `Ses longueurs s’accordent entre elles, mais toutes sont trop petites de ${percent}\u00a0% pour la vitesse de la classe. Vérifiez la fréquence du diapason, la règle et la température.`,
};
