import type { FirstWords } from '../catalogue.ts';

export const linkFault: FirstWords['linkFault'] = {
  damaged: 'Ten link jest uszkodzony. Poproś o niego jeszcze raz i skopiuj go w całości.',
  newer:
    'Ten link utworzyła nowsza wersja tej strony. Wczytaj stronę ponownie przy włączonej sieci i otwórz link jeszcze raz.',
  noInflate:
    'Ta przeglądarka jest za stara, żeby odczytać link. Użyj Firefox 113, Safari 16.4, Chrome 80 lub nowszej.',
  record: (why) => `Tego linku do lekcji nie można użyć: ${why} Poproś nauczyciela o nowy.`,
};
