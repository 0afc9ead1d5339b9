import type { LaterWords } from '../catalogue.ts';

export const turnRound: LaterWords['turnRound'] = {
  noFork: 'Zanotuj temperaturę powietrza i zaznacz przynajmniej jeden rezonans kamertonu wybranego powyżej.',
  fork: (hertz, uncertaintyHz) =>
    `Kamerton wybrany powyżej ma ${hertz} ± ${uncertaintyHz} Hz (95 %), jeśli dźwięk ma prędkość przewidywaną dla zanotowanej temperatury.`,
  noTemperature: (lowestC, highestC) =>
    `Nie ma jeszcze prędkości albo nie jest to prędkość dźwięku w powietrzu od ${lowestC} do ${highestC} °C.`,
  temperature: (celsius, uncertaintyC) =>
    `Jeśli gazem jest powietrze, jego temperatura to ${celsius} ± ${uncertaintyC} °C (95 %).`,
  noGas: 'Zanotuj temperaturę i zaznacz przynajmniej jeden rezonans.',
  nearestGas: (gas) => `Żaden gaz z listy nie ma takiej prędkości dźwięku. Najbliższy: ${gas}.`,
  fittingGases: (gases) =>
    `Ta prędkość pasuje, jeśli gazem jest: ${gases}. Pozostałe gazy z listy nie pasują.`,
  gas: (gas, mps) => `${gas} (${mps} m/s)`,
  noDiameter: 'Zanotuj średnicę rury i zaznacz dwa rezonanse.',
  endFromTheory:
    'Na razie poprawka na końcu rury pochodzi z teorii. Zaznacz rezonanse dwóch rzędów, żeby ją zmierzyć.',
  endRatio: (part, uncertainty, thinRim, usual) =>
    `Poprawka na końcu rury to (${part} ± ${uncertainty}) średnicy (95 %). Teoria podaje ${thinRim} dla cienkiego brzegu (Levine & Schwinger 1948); w przybliżeniu przyjmuje się zwykle ${usual}.`,
};
