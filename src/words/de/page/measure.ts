import type { FirstWords } from '../../catalogue.ts';
import { ordinal, plural } from '../grammar.ts';

export const marks: FirstWords['marks'] = {
  heading: 'Marken',
  undo: (step) => (step === null ? 'Rückgängig' : `Rückgängig: ${step}`),
  redo: 'Wiederholen',
  newMark: 'Neue Marke',
  newLength: 'Länge einer neuen Marke',
  add: 'Marke hinzufügen',
  waiting: (count) =>
    count === 1
      ? '1 Marke braucht ihre Länge. Tipp sie ein und drück Enter.'
      : `${count} Marken brauchen ihre Längen. Tipp eine ein und drück Enter, um zur nächsten zu gehen.`,
  none: 'Noch keine Marken. Jede gefundene Resonanz ergibt eine. Du kannst auch M drücken, oder über dem Rohr eine Länge eintippen.',
  deleted: (count) => `Gelöschte Marken (${count})`,
  bringBack: 'Zurückholen',
  atLength: (centimetres) => `bei ${centimetres}\u00a0cm`,
  bringBackAtLength: (centimetres) => `Die Marke bei ${centimetres}\u00a0cm zurückholen`,
  withoutLength: 'ohne Länge',
  bringBackWithoutLength: 'Die Marke ohne Länge zurückholen',
};

export const markRow: FirstWords['markRow'] = {
  mark: (number) => `Marke ${number}`,
  length: (number) => `Länge von Marke ${number}`,
  waits: 'Länge eintippen',
  overTube: 'Tipp sie über dem Rohr ein',
  choose: 'Ändern',
  chooseNamed: (number) => `Marke ${number} ändern`,
  fork: (number) => `Gabel von Marke ${number}`,
  column: (number) => `Säule von Marke ${number}`,
  place: (number) => `Ort von Marke ${number}`,
  alsoChange: (count) =>
    `Auch die ${plural(count, 'andere Marke', `anderen ${count} Marken`)} der gleichen Art ändern`,
  unsure: (percent) =>
    `Nur zu ${percent}\u00a0% sicher eine Resonanz: Schieb noch einmal hindurch, bevor du ihr traust.`,
  pass: (strike, pass) => `Anschlag ${strike}, ${ordinal(pass)} Durchgang`,
  untested: (missing) =>
    missing === 1 ? 'eine weitere Resonanz würde sie prüfen' : 'zwei weitere Resonanzen würden sie prüfen',
  notSolved: 'noch nicht ausgewertet',
  leftOut: 'ausgelassen',
  outlier: (cause) => `Ausreißer: ${cause}`,
  order: (number) => `Ordnung von Marke ${number}`,
  autoOrder: 'Ordnung: auto',
  ordinal: (order) => `${ordinal(order)} Ordnung`,
  locatedBy: (number) => `Wie die Länge von Marke ${number} gefunden wurde`,
  atCentre: 'in der Mitte',
  atLoudest: 'an der lautesten Stelle',
  leaveOut: 'Auslassen',
  leaveOutNamed: (number) => `Marke ${number} aus der Ausgleichsrechnung auslassen`,
  delete: 'Löschen',
  deleteNamed: (number) => `Marke ${number} löschen`,
  again: (evidence) => `Wiederholung: ${evidence}`,
  separate: 'Trennen',
  separateNamed: (number) => `Die Wiederholung von Marke ${number} trennen`,
  sameAsOther: 'Gleich wie…',
  sameAsNamed: (number) => `Marke mit derselben Resonanz wie Marke ${number}`,
  same: (number) => `Gleich wie ${number}`,
  sameNamed: (number, other) => `Marke ${number} ist dieselbe Resonanz wie Marke ${other}`,
};

export const result: FirstWords['result'] = {
  region: 'Schallgeschwindigkeit',
  heading: 'Angaben zum Ergebnis',
  spoken: (speed) => `Schallgeschwindigkeit: ${speed}.`,
  none: '—',
  unit: 'm/s',
};

export const doubts: FirstWords['doubts'] = { heading: 'Warnungen' };
