import type { LaterWords } from '../../catalogue.ts';

export const homeScreen: LaterWords['homeScreen'] = {
  advice:
    'Na iPhonie i iPadzie przeglądarka usuwa to, co zapisała ta strona, jeśli nie otworzysz jej przez siedem dni. Aplikacja na ekranie początkowym nie jest tak usuwana, ale jej archiwum jest na początku puste. Dlatego najpierw dodaj tę stronę do ekranu początkowego (Udostępnij, Do ekranu początkowego) i pracuj tam. To, co już tu zmierzono, zapisz jako plik.',
  save: 'Zapisz plik',
  read: 'Przeczytane',
};
