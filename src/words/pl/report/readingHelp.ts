import type { LaterWords } from '../../catalogue.ts';

export const readingHelp: LaterWords['readingHelp'] = {
  legend:
    'Na wykresach punkt to znacznik, a kreska przez niego to jego niepewność. Linia to dopasowanie. Krzyżyk to wartość odstająca, pominięta w dopasowaniu.',
  termsHeading: 'Co znaczą litery',
  terms: {
    k: 'współczynnik rozszerzenia. Niepewność standardowa razy k daje przedział, który obejmuje wartość prawdziwą w 95 na 100 takich pomiarów.',
    ν: 'stopnie swobody: jak dobrze znana jest sama niepewność. Im jest ich mniej, tym większe k.',
    Eₙ: 'różnica dwóch wartości podzielona przez ich łączną niepewność rozszerzoną. Między −1 a 1 obie się zgadzają.',
  },
  sourcesHeading: 'Źródła',
  sources: {
    speed: (references) => `Prędkość dźwięku w powietrzu: ${references}.`,
    end: (references) => `Poprawka na końcu rury: ${references}.`,
    wall: (references) => `Spowolnienie przez ściankę: ${references}.`,
    uncertainty: (references) => `Niepewność: ${references}.`,
  },
};
