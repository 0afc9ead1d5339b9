import type { FirstWords } from '../catalogue.ts';

export const pageFault: FirstWords['pageFault'] = {
  action:
    'Coś na stronie zawiodło: ostatnia czynność mogła się nie udać. To, co wpisano wcześniej, nadal tu jest. Spróbuj ponownie; jeśli znów się nie uda, zapisz plik JSON w widoku Archiwum i wczytaj stronę ponownie.',
  follow:
    'Część strony nie pokazuje ostatniej zmiany, ale zmiana jest zrobiona. „Cofnij” ją wycofa; po ponownym wczytaniu strony będzie widoczna.',
  hearing: 'Słuchanie nie nadążyło za ostatnią zmianą: zatrzymaj je i zacznij słuchać ponownie.',
  view: 'Nie udało się wczytać tego widoku: nie ma sieci albo strona się zmieniła. To, co wpisano, nadal tu jest; spróbuj ponownie albo wczytaj stronę jeszcze raz.',
};
