import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const tooLong: FirstWords['tooLong'] = {
  title: (length, longest) =>
    `Tytuł ma ${counted(length, 'znak', 'znaki', 'znaków')}; może mieć najwyżej ${longest}. Skróć go.`,
  place: (length, longest) =>
    `Nazwa miejsca ma ${counted(length, 'znak', 'znaki', 'znaków')}; może mieć najwyżej ${longest}. Skróć ją.`,
  group: (length, longest) =>
    `Nazwa grupy ma ${counted(length, 'znak', 'znaki', 'znaków')}; może mieć najwyżej ${longest}. Skróć ją.`,
  fork_id: (length, longest) =>
    `Nazwa kamertonu ma ${counted(length, 'znak', 'znaki', 'znaków')}; może mieć najwyżej ${longest}. Skróć ją.`,
  note: (length, longest) =>
    `Notatka ma ${counted(length, 'znak', 'znaki', 'znaków')}; może mieć najwyżej ${longest}. Skróć ją.`,
};

export const keepingFault: FirstWords['keepingFault'] = {
  listFull: {
    marks: (most) =>
      `Doświadczenie mieści najwyżej ${counted(most, 'znacznik', 'znaczniki', 'znaczników')}. Zacznij nowe dla następnych (Archiwum).`,
    deletedMarks: (most) =>
      `Doświadczenie mieści najwyżej ${counted(most, 'usunięty znacznik', 'usunięte znaczniki', 'usuniętych znaczników')}. Przywróć któreś albo zacznij nowe doświadczenie (Archiwum).`,
    forks: (most) =>
      `Doświadczenie mieści najwyżej ${counted(most, 'kamerton', 'kamertony', 'kamertonów')}. Usuń taki, który nie ma znaczników.`,
    places: (most) =>
      `Doświadczenie mieści najwyżej ${counted(most, 'miejsce', 'miejsca', 'miejsc')}. Usuń takie, które nie ma znaczników.`,
  },
  unreadable: (why) => `Tego nie da się zapisać: ${why}`,
  tooLarge: (megabytes, mostMegabytes) =>
    `Doświadczenie miałoby ${megabytes}\u00a0MB; jego plik może mieć ${mostMegabytes}\u00a0MB. Zacznij nowe dla następnych (Archiwum) albo skróć notatki.`,
};

export const notLoaded: FirstWords['notLoaded'] = {
  missing: 'już go nie ma.',
  unreadable: (why) => `${why} W widoku Archiwum można je zapisać bez zmian.`,
};
