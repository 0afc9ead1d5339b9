import type { LaterWords } from '../catalogue.ts';

export const turnRound: LaterWords['turnRound'] = {
  noFork: 'Anota la temperatura del aire y marca al menos una resonancia del diapasón elegido arriba.',
  fork: (hertz, uncertaintyHz) =>
    `El diapasón elegido arriba tiene ${hertz} ± ${uncertaintyHz}\u00a0Hz (95\u00a0%), si el sonido lleva la velocidad prevista para la temperatura anotada.`,
  noTemperature: (lowestC, highestC) =>
    `Todavía no hay velocidad, o es una que el aire no tiene entre ${lowestC} y ${highestC}\u00a0°C.`,
  temperature: (celsius, uncertaintyC) =>
    `Si el gas es aire, su temperatura es ${celsius} ± ${uncertaintyC}\u00a0°C (95\u00a0%).`,
  noGas: 'Anota la temperatura y marca al menos una resonancia.',
  nearestGas: (gas) => `Ningún gas de la lista tiene esta velocidad. El más cercano: ${gas}.`,
  fittingGases: (gases) => `La velocidad encaja con: ${gases}. Los demás gases de la lista no encajan.`,
  gas: (gas, mps) => `${gas} (${mps}\u00a0m/s)`,
  noDiameter: 'Anota el diámetro del tubo y marca dos resonancias.',
  endFromTheory:
    'Por ahora la corrección de extremo viene de la teoría. Marca resonancias de dos órdenes para medirla.',
  endRatio: (part, uncertainty, thinRim, usual) =>
    `La corrección de extremo es (${part} ± ${uncertainty}) veces el diámetro (95\u00a0%). La teoría da ${thinRim} para un borde fino (Levine & Schwinger 1948); la regla práctica habitual es ${usual}.`,
};
