import type { FirstWords } from '../../catalogue.ts';
import { plural } from '../grammar.ts';

export const source: FirstWords['source'] = {
  legend: 'Tonquelle',
  names: { practice: 'Übungssäule', microphone: 'Mikrofon', recording: 'Aufnahme' },
  listen: 'Zuhören',
  stop: 'Stopp',
  open: 'Aufnahme öffnen',
  file: 'Zu öffnende Aufnahme',
  progress: 'Die Aufnahme wird angehört',
  rate: (kilohertz, processing) => `${kilohertz}\u00a0kHz, ${processing}`,
  processing: {
    on: 'vom Browser verändert',
    unknown: 'vielleicht vom Browser verändert',
    off: 'vom Browser nicht verändert',
  },
};

export const now: FirstWords['now'] = {
  legend: 'Jetzt gemessen',
  fork: 'Gabel',
  hertz: (frequency) => `${frequency}\u00a0Hz`,
  addFork: 'Gabel hinzufügen…',
  alsoChange: (marks) =>
    `Auch ${plural(marks, 'die bisherige Marke', `die ${marks} bisherigen Marken`)} ändern`,
  column: 'Säule',
  place: 'Ort',
};

export const drawn: FirstWords['drawn'] = {
  wave: 'Welle',
  waveNamed: 'Gezeichnete Welle',
  waves: { pressure: 'Druck', displacement: 'Auslenkung', none: 'keine' },
  expected: 'Erwartete Längen',
};

export const readout: FirstWords['readout'] = {
  none: '–',
  unit: 'dB über Raumgeräusch',
  noneSpoken: 'Anstieg über das Raumgeräusch: kein Ton gehört',
  levelSpoken: (riseDb) => `Anstieg über das Raumgeräusch: ${riseDb} Dezibel`,
  check: (sign, verdict) => `Diese Länge: ${sign} ${verdict}`,
};

export const wayBack: FirstWords['wayBack'] = {
  idle: 'Zurück zur Resonanz',
  here: 'Hier.',
  holdStill: 'Halte still und lies den Maßstab ab.',
  atMaximum: 'An der lautesten Stelle.',
  toGo: 'mm bis dahin',
  hereLarge: 'Hier',
  nothingToGo: 'Maßstab ablesen',
  moves: {
    piston: { tooLong: 'hineinschieben', tooShort: 'herausziehen' },
    dipped: { tooLong: 'Rohr senken', tooShort: 'Rohr heben' },
    filled: { tooLong: 'Wasser anheben', tooShort: 'Wasser absenken' },
  },
  off: (side, move) => `${side}: ${move}`,
  heardAgo: (seconds) => `(vor ${seconds}\u00a0s)`,
  lost: 'Die Stelle ist verloren. Schieb noch einmal an ihr vorbei und komm dann von beiden Seiten zurück.',
  byLevel: 'Zurück zur lautesten Stelle: Geh von beiden Seiten an ihr vorbei.',
  tooShort: 'zu kurz',
  tooLong: 'zu lang',
  spoken: {
    here: 'Hier. Halte still.',
    atMaximum: 'An der lautesten Stelle.',
    tooLong: (move) => `Zu lang: ${move}.`,
    tooLongBy: (mm, move) => `Um ${mm}\u00a0mm zu lang: ${move}.`,
    tooShort: (move) => `Zu kurz: ${move}.`,
    tooShortBy: (mm, move) => `Um ${mm}\u00a0mm zu kurz: ${move}.`,
    lost: 'Die Stelle ist verloren. Schieb noch einmal an ihr vorbei.',
    close: 'Nahe der lautesten Stelle.',
    away: 'Weg von der lautesten Stelle.',
  },
};

export const task: FirstWords['task'] = { task: 'Aufgabe:' };
