import type { LaterWords } from '../catalogue.ts';

export const turnRound: LaterWords['turnRound'] = {
  noFork:
    'Notiere die Lufttemperatur und setz mindestens eine Marke bei einer Resonanz der oben gewählten Gabel.',
  fork: (hertz, uncertaintyHz) =>
    `Die oben gewählte Gabel hat ${hertz} ± ${uncertaintyHz}\u00a0Hz (95\u00a0%), wenn der Schall die für die notierte Temperatur berechnete Geschwindigkeit hat.`,
  noTemperature: (lowestC, highestC) =>
    `Es gibt noch keine Geschwindigkeit, oder eine, die Luft zwischen ${lowestC} und ${highestC}\u00a0°C nicht hat.`,
  temperature: (celsius, uncertaintyC) =>
    `Wenn das Gas Luft ist, ist es ${celsius} ± ${uncertaintyC}\u00a0°C warm (95\u00a0%).`,
  noGas: 'Notiere die Temperatur und setz mindestens eine Marke bei einer Resonanz.',
  nearestGas: (gas) => `Kein Gas der Liste hat diese Geschwindigkeit. Am nächsten liegt: ${gas}.`,
  fittingGases: (gases) => `Die Geschwindigkeit passt zu: ${gases}. Die anderen Gase der Liste passen nicht.`,
  gas: (gas, mps) => `${gas} (${mps}\u00a0m/s)`,
  noDiameter: 'Notiere den Durchmesser des Rohrs und setz Marken bei zwei Resonanzen.',
  endFromTheory:
    'Bis jetzt kommt die Mündungskorrektur aus der Theorie. Um sie zu messen, setz Marken bei Resonanzen zweier Ordnungen.',
  endRatio: (part, uncertainty, thinRim, usual) =>
    `Die Mündungskorrektur ist das (${part} ± ${uncertainty})-Fache des Durchmessers (95\u00a0%). Die Theorie sagt ${thinRim} bei dünnem Rand (Levine & Schwinger 1948); die übliche Faustregel ist ${usual}.`,
};
