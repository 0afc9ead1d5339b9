import type { LaterWords } from '../catalogue.ts';

export const turnRound: LaterWords['turnRound'] = {
  noFork: 'Zanotuj temperaturę powietrza i zaznacz przynajmniej jeden rezonans kamertonu wybranego powyżej.',
  fork: (hertz, uncertaintyHz) =>
    `Kamerton wybrany powyżej ma ${hertz} ± ${uncertaintyHz}\u00a0Hz (95\u00a0%), jeśli dźwięk ma prędkość przewidywaną dla zanotowanej temperatury.`,
  noTemperature: (lowestC, highestC) =>
    `Nie ma jeszcze prędkości albo nie jest to prędkość dźwięku w powietrzu od ${lowestC} do ${highestC}\u00a0°C.`,
  temperature: (celsius, uncertaintyC) =>
    `Jeśli gazem jest powietrze, jego temperatura to ${celsius} ± ${uncertaintyC}\u00a0°C (95\u00a0%).`,
  noGas: 'Zanotuj temperaturę i zaznacz przynajmniej jeden rezonans.',
  nearestGas: (gas) => `Żaden gaz z listy nie ma takiej prędkości dźwięku. Najbliższy: ${gas}.`,
  fittingGases: (gases) =>
    `Ta prędkość pasuje, jeśli gazem jest: ${gases}. Pozostałe gazy z listy nie pasują.`,
  gas: (gas, mps) => `${gas} (${mps}\u00a0m/s)`,
  noDiameter: 'Zanotuj średnicę rury i zaznacz dwa rezonanse.',
  endFromTheory:
    'Na razie poprawka na końcu rury pochodzi z teorii. Zaznacz rezonanse dwóch rzędów, żeby ją zmierzyć.',
  endRatio: (part, uncertainty, thinRim, usual) =>
    `Poprawka na końcu rury to (${part} ± ${uncertainty}) średnicy (95\u00a0%). Teoria podaje ${thinRim} dla cienkiego brzegu (Levine & Schwinger 1948); w przybliżeniu przyjmuje się zwykle ${usual}.`,
};
