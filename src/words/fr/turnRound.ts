import type { LaterWords } from '../catalogue.ts';

export const turnRound: LaterWords['turnRound'] = {
  noFork:
    'Notez la température de l’air et placez un repère sur au moins une résonance du diapason choisi ci-dessus.',
  fork: (hertz, uncertaintyHz) =>
    `Le diapason choisi ci-dessus a une fréquence de ${hertz} ± ${uncertaintyHz}\u00a0Hz (95\u00a0%), si le son a la vitesse prévue pour la température notée.`,
  noTemperature: (lowestC, highestC) =>
    `Il n’y a pas encore de vitesse, ou c’en est une que l’air n’a pas entre ${lowestC} et ${highestC}\u00a0°C.`,
  temperature: (celsius, uncertaintyC) =>
    `Si le gaz est de l’air, sa température est de ${celsius} ± ${uncertaintyC}\u00a0°C (95\u00a0%).`,
  noGas: 'Notez la température et placez un repère sur au moins une résonance.',
  nearestGas: (gas) => `Aucun gaz de la liste n’a cette vitesse. Le plus proche\u00a0: ${gas}.`,
  fittingGases: (gases) =>
    `La vitesse convient\u00a0: ${gases}. Les autres gaz de la liste ne conviennent pas.`,
  gas: (gas, mps) => `${gas} (${mps}\u00a0m/s)`,
  noDiameter: 'Notez le diamètre du tube et placez un repère sur deux résonances.',
  endFromTheory:
    'Jusqu’ici, la correction d’extrémité vient de la théorie. Pour la mesurer, placez des repères sur des résonances de deux ordres.',
  endRatio: (part, uncertainty, thinRim, usual) =>
    `La correction d’extrémité est de (${part} ± ${uncertainty}) fois le diamètre (95\u00a0%). La théorie donne ${thinRim} pour un bord mince (Levine & Schwinger 1948)\u00a0; la règle empirique usuelle est ${usual}.`,
};
