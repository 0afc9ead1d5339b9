import type { LaterWords } from '../../catalogue.ts';
import { dayAndTime } from '../../dates.ts';
import { counted, plural } from '../grammar.ts';

export const report: LaterWords['report'] = {
  title: 'Schallgeschwindigkeit in einer Luftsäule',
  fileTitle: 'Protokoll Luftsäule',
  dates: (createdAt, changedAt) =>
    `Begonnen ${dayAndTime(createdAt)}, zuletzt geändert ${dayAndTime(changedAt)} (UTC)`,
  names: 'Namen',
  classAndDate: 'Klasse und Datum',
  date: 'Datum',
  group: (group) => `Gruppe: ${group}`,
  className: (name) => `Klasse: ${name}`,
  questions: 'Fragen',
  task: 'Aufgabe',
  note: 'Notiz',
  notWorked: (places) =>
    `Diagramme, Rechnung und Budget von ${counted(places, 'weiteren Ort', 'weiteren Orten')} sind nicht gedruckt. „Rechnung“ auf der Seite zeigt die des gewählten Orts.`,
  cautions: 'Vorsicht',
  cautionList: [
    'Schlag die Gabel an Gummi oder einer Schuhsohle an, nie an Glas oder einer harten Kante.',
    'Halte eine klingende Gabel von Zähnen und Glas fern.',
    'Ein Glasrohr bricht leicht: Klemm es weich ein. Halte Wasser von elektrischen Geräten fern.',
    'Gespielte Töne beginnen leise. Die Regeln eures Fachraums gehen vor.',
  ],
  discussion: 'Diskussion',
};

export const resultPart: LaterWords['resultPart'] = {
  heading: 'Ergebnis: Schallgeschwindigkeit in freier Luft',
  own: 'c = ( ________ ± ________ ) m/s',
  speed: (speed) =>
    speed === null
      ? 'Noch lässt sich keine Geschwindigkeit angeben.'
      : `c = (${speed.value} ± ${speed.uncertainty}) m/s`,
  none: 'Es gibt noch keine Marke mit einer Länge.',
  notPrinted: (places) =>
    `${counted(places, 'weiterer Ort steht', 'weitere Orte stehen')} in der Tabelle „Ergebnis“ in der Ablage.`,
};

export const placePart: LaterWords['placePart'] = {
  plots: (place) => (place === null ? 'Diagramme' : `Diagramme, ${place}`),
  working: (place) => (place === null ? 'Rechnung' : `Rechnung, ${place}`),
  budget: (place) => (place === null ? 'Unsicherheitsbudget' : `Unsicherheitsbudget, ${place}`),
  budgetTable: 'Zeilen des Budgets',
};

export const warningsPart: LaterWords['warningsPart'] = {
  heading: 'Warnungen',
  none: 'Keine.',
  ofPlace: (place, warning) => `${place}: ${warning}`,
  notPrinted: (warnings) =>
    `${counted(warnings, 'weitere Warnung ist', 'weitere Warnungen sind')} nicht gedruckt.`,
};

export const apparatusPart: LaterWords['apparatusPart'] = {
  heading: 'Aufbau',
  fork: 'Gabel',
  forksLeft: 'Weitere Gabeln',
  tube: 'Rohr',
  rule: 'Maßstab',
  air: (place) => `Luft, ${place}`,
  placesLeft: 'Weitere Orte',
  left: (count) => `${count}, nicht gedruckt; sie stehen in der Tabelle „Marken“ in der Ablage`,
};

export const apparatusFacts: LaterWords['apparatusFacts'] = {
  stamped: (hz, uncertaintyHz) => `Aufdruck ${hz}\u00a0Hz ± ${uncertaintyHz}\u00a0Hz (Standardunsicherheit)`,
  measured: (stampedHz, measuredHz, uncertaintyHz) =>
    `Aufdruck ${stampedHz}\u00a0Hz, gemessen ${measuredHz} ± ${uncertaintyHz}\u00a0Hz (Standardunsicherheit); die gemessene Frequenz zählt`,
  noDiameter: 'Innendurchmesser nicht gemessen',
  diameter: (mm) => `Innendurchmesser ${mm}\u00a0mm`,
  otherDiameter: (mm) => `${mm}\u00a0mm am anderen offenen Ende`,
  reading: (mm) =>
    `eine Ablesung ± ${mm}\u00a0mm (Standardunsicherheit, das Finden der Resonanz eingeschlossen)`,
  readingNotStated: (taken) => `Ableseunsicherheit nicht angegeben: ${taken}`,
  zeroOffset: (mm) => `Nullpunktverschiebung ${mm}\u00a0mm`,
  temperature: (celsius, uncertainty) => `${celsius} ± ${uncertainty}\u00a0°C (Standardunsicherheit)`,
  noTemperature: 'Temperatur nicht abgelesen',
  humidity: (percent) => `${percent}\u00a0% Luftfeuchte`,
  noHumidity: 'Luftfeuchte nicht abgelesen',
  pressure: (hPa) => `${hPa}\u00a0hPa`,
  noPressure: 'Luftdruck nicht abgelesen',
  co2: (ppm) => `${ppm}\u00a0ppm Kohlendioxid`,
};

export const methodPart: LaterWords['methodPart'] = {
  heading: 'Durchführung',
  opening:
    'Eine klingende Stimmgabel wird an die Mündung einer Luftsäule gehalten und die Länge der Säule verändert, bis sie in Resonanz kommt: Der Ton wird bei der Frequenz der Gabel lauter.',
  heard: (heard, marks, where) =>
    `${heard} von ${counted(marks, 'Marke', 'Marken')} ${plural(heard, 'wurde', 'wurden')} durch Hören allein bei der Frequenz der Gabel gefunden, ${where}, im Vergleich mit dem Raumgeräusch in demselben schmalen Band; dann wurde die Länge am Maßstab abgelesen.`,
  sources: {
    microphone: 'über das Mikrofon',
    recording: 'in einer Aufnahme',
    practice: 'an der simulierten Übungssäule',
  },
  byHand: (byHand, marks) =>
    `${byHand} von ${counted(marks, 'Marke', 'Marken')} ${plural(byHand, 'wurde', 'wurden')} von Hand gesetzt.`,
  bracketed: (marks) =>
    `Wo eine Marke zwei Längen hat (${marks}), liegt die Resonanz dazwischen, und die Mitte zählt.`,
  theory:
    'Eine einseitig geschlossene Säule ist in Resonanz, wenn ihre Länge ein ungerades Vielfaches einer Viertelwellenlänge ist, eine beidseitig offene bei einem ganzen Vielfachen einer halben Wellenlänge, jeweils abzüglich einer Mündungskorrektur an jedem offenen Ende. Die Geschwindigkeit ist Wellenlänge mal Frequenz. Eine gewichtete Ausgleichsrechnung nimmt alle Marken zusammen, jede mit ihrer Unsicherheit. Ist der Rohrdurchmesser bekannt, wird berücksichtigt, dass die Wand die Welle bremst.',
};

export const marksPart: LaterWords['marksPart'] = {
  heading: 'Marken',
  none: 'Noch keine.',
  table: 'Tabelle der Marken',
  mark: 'Marke',
  column: 'Gabel und Säule',
  length: 'Länge, cm',
  order: 'Ordnung',
  residual: 'Abweichung, mm',
  remarks: 'Bemerkungen',
  nothing: '—',
  number: (number, isAgain) => (isAgain ? `${number} wieder` : `${number}`),
  between: (oneCm, otherCm) => `${oneCm} bis ${otherCm}`,
  repeats: (mark) => `noch ein Durchgang durch die Resonanz von Marke ${mark}`,
  leftOut: 'ausgelassen',
  outlier: (cause) => `Ausreißer: ${cause}`,
  below: (shown, all) =>
    shown === all
      ? 'Längen, wie der Maßstab sie zeigt.'
      : `Längen, wie der Maßstab sie zeigt. Von ${all} Marken sind die ersten ${shown} gedruckt; die Tabellen in der Ablage haben alle.`,
};

export const comparisonPart: LaterWords['comparisonPart'] = {
  heading: 'Vergleich mit der Theorie',
  headingHidden: 'Vergleich',
  hidden: 'Diese Unterrichtsstunde verbirgt die berechnete Geschwindigkeit.',
  theory:
    'Die berechnete Geschwindigkeit gilt für Schall in Luft bei den notierten Werten von Temperatur, Feuchte und Druck (Cramer 1993); in einem anderen Gas ist sie √(γRT/M).',
  place: (place, difference) =>
    difference === null
      ? `${place}: Die Lufttemperatur wurde nicht notiert, also lässt sich keine Geschwindigkeit berechnen.`
      : `${place}: gemessene minus berechnete Geschwindigkeit: ${difference}.`,
  pairsLeft: (pairs) =>
    `${counted(pairs, 'weiteres Paar von Orten ist', 'weitere Paare von Orten sind')} nicht gedruckt. „Vergleichen“ auf der Seite zeigt den Unterschied zwischen je zweien.`,
};
