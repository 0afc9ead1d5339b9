import type { LaterWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const handIn: LaterWords['handIn'] = {
  heading: 'Oddaj pracę',
  lead: 'Pokazuje kod ze znacznikami, które się liczą, układem i nazwą grupy. Nauczyciel odczyta go z tego ekranu telefonem, tabletem albo w widoku Klasa. Nic nie jest wysyłane.',
  none: 'Żaden znacznik nie ma jeszcze długości.',
  unnamed: 'Wasza grupa nie ma jeszcze nazwy. Wpisz ją w części „To doświadczenie”.',
  show: 'Pokaż kod',
  hide: 'Ukryj kod',
  codeName: 'wynik tej grupy',
  holds: (group, marks) =>
    `${group}: ${counted(marks, 'znacznik', 'znaczniki', 'znaczników')}. W kodzie nie ma notatek, dźwięku ani żadnej nazwy poza nazwą grupy.`,
  link: 'To samo jako link',
};
