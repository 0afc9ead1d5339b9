import type { FirstWords } from '../catalogue.ts';

export const waitsFor: FirstWords['waitsFor'] = {
  permission:
    'Der Browser fragt, ob diese Seite das Mikrofon benutzen darf: Schau neben die Adresse und wähle „Zulassen“.',
};

export const hold: FirstWords['hold'] = {
  muted:
    'Das Mikrofon ist stumm, durch einen Schalter oder das System. Schalte es ein: Das Zuhören geht dann von selbst weiter.',
  suspended:
    'Der Browser hat den Ton angehalten (ein Anruf, eine verdeckte Seite, Ruhezustand). Geh zur Seite zurück oder starte neu.',
  frozen: 'Seit zwei Sekunden kommt kein Ton vom Mikrofon. Wenn er nicht wiederkommt, starte neu.',
};

export const noSound: FirstWords['noSound'] =
  'Vom Mikrofon kommt gar kein Ton. Such einen Stummschalter oder eine Stummtaste, oder wähle unter Prüfen ein anderes.';

export const captureFailure: FirstWords['captureFailure'] = {
  withoutMicrophone: (advice) =>
    `${advice} Alles andere geht auch ohne: Längen von Hand eintippen, eine Aufnahme öffnen oder die Übungssäule benutzen.`,
  'recording-broken': {
    what: 'Die Aufnahme ließ sich nicht bis zum Ende auswerten.',
    advice: 'Öffne sie noch einmal; wenn das nicht hilft, speichere sie als WAV und öffne diese.',
  },
  'listening-broken': {
    what: 'Die Seite konnte nicht anfangen zuzuhören oder hat abgebrochen.',
    advice: 'Starte neu; wenn das nicht hilft, prüfe die Verbindung und lade die Seite neu.',
  },
  'audio-broken': {
    what: 'Der Ton des Browsers ist ausgefallen.',
    advice: 'Was schon gefunden wurde, bleibt. Starte neu; wenn es wieder geschieht, lade die Seite neu.',
  },
  'insecure-context': {
    what: 'Der Browser gibt das Mikrofon nur Seiten mit sicherer Adresse.',
    advice: 'Öffne diese Seite mit https:// (oder auf localhost).',
  },
  framed: {
    what: 'Diese Seite ist in eine andere eingebettet, die ihr das Mikrofon vorenthält.',
    advice: 'Öffne sie in einem eigenen Tab und starte neu.',
  },
  'permission-withdrawn': {
    what: 'Die Erlaubnis für das Mikrofon wurde zurückgenommen.',
    advice:
      'Was schon gefunden wurde, bleibt. Drück auf das Symbol neben der Adresse, erlaube das Mikrofon wieder und starte neu.',
  },
  'microphone-busy': {
    what: 'Das Mikrofon lässt sich nicht öffnen: Vielleicht benutzt es ein anderes Programm oder ein anderer Tab.',
    advice: 'Schließ das (einen Anruf, ein Aufnahmeprogramm) und starte neu.',
  },
  'microphone-lost': {
    what: 'Das Mikrofon wurde abgezogen oder ausgeschaltet.',
    advice: 'Was schon gefunden wurde, bleibt. Steck es ein und starte neu.',
  },
  'uneven-sound': {
    what: 'Der Ton kommt schneller oder langsamer, als der Browser angibt, oder der Computer kommt nicht mit: Zeiten und Frequenzen wären falsch.',
    advice:
      'Was schon gefunden wurde, bleibt. Schließ andere Programme, zieh das Mikrofon ab, steck es wieder ein und starte neu.',
  },
  closed: {
    what: 'Die Frage nach dem Mikrofon wurde ohne Antwort geschlossen.',
    advice: 'Starte neu und wähle „Zulassen“.',
  },
  refused: {
    what: 'Das Mikrofon wurde verweigert.',
    advice:
      'Drück auf das Symbol neben der Adresse, erlaube das Mikrofon für diese Seite und starte neu. Wenn es dort nichts zu erlauben gibt, hat die Administration der Schule es abgeschaltet.',
  },
  system: {
    what: 'Die Datenschutzeinstellungen des Computers geben dem Browser das Mikrofon nicht.',
    advice: 'Erlaube es dort (Datenschutz, Mikrofon) und starte neu.',
  },
  policy: {
    what: 'Eine Richtlinie dieser Website oder der Schule gibt Seiten das Mikrofon nicht.',
    advice: 'Bitte die Administration der Schule, es zu erlauben.',
  },
  'none-given': {
    what: 'Dieser Browser lässt Webseiten kein Mikrofon benutzen.',
    advice: 'Nimm einen aktuellen Chrome, Edge, Firefox oder Safari.',
  },
  'none-found': {
    what: 'Es wurde kein Mikrofon gefunden.',
    advice: 'Steck eines ein oder schalte es ein und starte neu.',
  },
  'not-there': {
    what: 'Das gewählte Mikrofon ist nicht mehr da.',
    advice: 'Wähle ein anderes und starte neu.',
  },
};
