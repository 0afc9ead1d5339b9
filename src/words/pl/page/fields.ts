import type { FirstWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const field: FirstWords['field'] = {
  length: 'Długość',
  centimetres: 'cm',
  changeSign: 'Powyżej lub poniżej zera',
  dash: 'Kreska, potem druga długość',
  take: 'Użyj mimo to',
  stillWaits: 'To wpisano wcześniej i jeszcze nie jest użyte. Naciśnij Enter, żeby tego użyć.',
  forget: 'Wyczyść',
  tooLong: (characters, most) =>
    `Nie wklejono: pole miałoby ${counted(characters, 'znak', 'znaki', 'znaków')}, a może mieć najwyżej ${most}. Wklej krótszy tekst.`,
  workingOut: 'obliczanie…',
};
