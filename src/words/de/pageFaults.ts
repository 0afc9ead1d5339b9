import type { FirstWords } from '../catalogue.ts';

export const pageFault: FirstWords['pageFault'] = {
  action:
    'Auf der Seite ist etwas schiefgegangen: Was du gerade getan hast, hat vielleicht nicht geklappt. Was du vorher eingegeben hast, ist noch da. Versuch es noch einmal; wenn es wieder nicht geht, speichere die JSON-Datei unter Ablage und lade die Seite neu.',
  follow:
    'Ein Teil der Seite zeigt die letzte Änderung nicht, sie ist aber gemacht. „Rückgängig“ nimmt sie zurück; nach dem Neuladen der Seite ist sie zu sehen.',
  hearing: 'Das Zuhören kam bei der letzten Änderung nicht mit: Stopp es, und hör noch einmal zu.',
  view: 'Diese Ansicht ließ sich nicht laden: Es gibt kein Netz, oder die Website hat sich geändert. Was du eingegeben hast, ist noch da; versuch es noch einmal, oder lade die Seite neu.',
};
