import type { FirstWords } from '../../catalogue.ts';

export const capture: FirstWords['capture'] = {
  ended: 'Zuhören beendet',
  notListening: 'Es wird nicht zugehört.',
  held: 'Zuhören angehalten',
  paused: 'Angehalten.',
  again: 'Neu starten',
  ownTab: 'In eigenem Tab öffnen',
  help: 'Hilfe zum Mikrofon',
};

export const processingFlag: FirstWords['processingFlag'] = {
  on: 'ein',
  off: 'aus',
  unknown: 'unbekannt',
};

export const trustPart: FirstWords['trustPart'] = {
  name: 'Ist auf den Pegel Verlass?',
  doubtful: 'Der Pegel ist zweifelhaft.',
  unproven: 'Noch nicht geprüft.',
  withheld: (flags) =>
    `Gehört, aber nicht markiert: ${flags}. Der Ton brach im Durchgang ab, wie wenn eine Rauschunterdrückung den Ton abschneidet: Vielleicht war es keine Resonanz.`,
  flag: (seconds, riseDb) => `bei ${seconds}\u00a0s, Anstieg ${riseDb}\u00a0dB`,
  maybes:
    'Vielleicht eine Resonanz. Schieb noch einmal hindurch: Wird sie wieder gehört, wird sie zur Marke. Oder behalte sie, wenn du sie auch gehört hast.',
  maybe: (seconds, percent, reason) => `○ bei ${seconds}\u00a0s, zu ${percent}\u00a0% sicher: ${reason}`,
  keep: 'Behalten',
  keepNamed: (seconds) => `Die Resonanz bei ${seconds}\u00a0s behalten`,
  letIn: 'Trotzdem markieren',
  letInNamed: (flag) => `Die Resonanz ${flag} markieren`,
  letAllIn: 'Alle markieren',
  toCheck: 'Zum Verstärkungstest',
};
