import type { LaterWords } from '../../catalogue.ts';

export const keys: LaterWords['keys'] = {
  heading: 'Klawisze',
  keys: [
    ['L', 'zacznij słuchać albo zakończ'],
    ['M', 'dodaj znacznik; jego długość wpiszesz później'],
    ['K', 'zachowaj to, co może jest rezonansem, od najnowszego'],
    [
      'E',
      'przejdź do najnowszego znacznika bez długości; gdy takiego nie ma, do pola, które dodaje znacznik',
    ],
    ['Enter', 'użyj wpisanej długości i przejdź do następnego znacznika'],
    ['Esc', 'wyjdź z pola, żeby te klawisze znów działały'],
    ['S', 'ćwiczenie: uderz w kamerton'],
    ['F', 'ćwiczenie: zbliż kamerton do wylotu albo go oddal'],
    ['← →', 'zmień długość o 1\u00a0mm; przytrzymaj, żeby przesuwać dalej'],
    ['Shift ← →', 'zmień długość o 0,2\u00a0mm'],
    ['Ctrl Z', 'cofnij'],
    ['Ctrl Y', 'ponów'],
    ['?', 'pokaż te klawisze'],
  ],
  close: 'Zamknij',
};
