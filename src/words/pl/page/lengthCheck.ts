import type { FirstWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const lengthAnswer: FirstWords['lengthAnswer'] = {
  listening: 'Strona słucha',
  how: 'Uderz w kamerton. Trzymaj go dwie sekundy przy wylocie, dwie z dala i tak dalej, trzy razy.',
  verdicts: {
    resonant: 'Rezonans',
    'not-resonant': 'Brak rezonansu',
    'cannot-tell': 'Jeszcze nie wiadomo',
  },
  fewChanges: (comparisons) =>
    `Kamerton zbliżył się do wylotu albo oddalił dotąd ${counted(comparisons, 'raz', 'razy', 'razy')}; potrzeba co najmniej trzech.`,
  hindrances: {
    'no-fork': 'Nie słychać jeszcze kamertonu. Uderz w niego i trzymaj go przy wylocie.',
    'lost-sound': 'Tymczasem zgubiono dźwięk: zamknij inne programy i zacznij od nowa.',
    noise:
      'W sali jest za głośno, żeby porównać kamerton. Uderz mocniej, trzymaj kamerton bliżej albo poczekaj, aż będzie ciszej.',
    unsteady:
      'Poziom zmienia się też inaczej. Nie zmieniaj długości słupa i trzymaj kamerton nieruchomo w każdym z jego dwóch położeń.',
  },
  rise: (riseDb, uncertaintyDb, comparisons) =>
    `Przy wylocie kamerton jest głośniejszy o ${riseDb} ± ${uncertaintyDb}\u00a0dB (95\u00a0%), porównano ${counted(comparisons, 'raz', 'razy', 'razy')}.`,
};
