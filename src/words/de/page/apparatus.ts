import type { LaterWords } from '../../catalogue.ts';
import { fixed, hertz } from '../../numbers.ts';

export const tube: LaterWords['tube'] = {
  heading: 'Rohr und Maßstab',
  diameter: 'Innendurchmesser',
  diameterHint: 'für die Mündungskorrektur und die Bremsung durch die Wand',
  otherDiameter: 'Durchmesser am anderen Ende',
  otherDiameterHint: 'bei einem Rohr, das in einem anderen gleitet, beidseitig offen; leer: derselbe',
  travel: 'Längste Säule',
  travelHint: 'größte Länge, die du einstellen kannst',
  stopper: 'Abschluss der Säule',
  stoppers: {
    piston: 'ein Kolben',
    dipped: 'Wasser, das Rohr bewegt sich',
    filled: 'Wasser, sein Spiegel bewegt sich',
  },
  reading: 'Ableseunsicherheit',
  readingHint: (taken) =>
    `Standardunsicherheit einer Länge, das Finden der Resonanz eingeschlossen. Wenn leer: ${taken}.`,
  zero: 'Nullpunktverschiebung',
  zeroHint: 'was der Maßstab bei Säulenlänge null zeigt; wird von jeder Ablesung abgezogen',
  caution:
    'Ein Glasrohr bricht leicht: Klemm es weich ein, und halte Wasser vom Laptop fern. Die Regeln eures Fachraums gehen vor.',
};

export const mouthChoice: LaterWords['mouthChoice'] = {
  legend: 'Mündung des Rohrs',
  lead: 'Die Säule wirkt länger als ihr Rohr; um wie viel, hängt von der Mündung ab (gestrichelt in den Bildern). Dieser Wert zählt zusammen mit deinen Längen; sind sie genauer, korrigieren sie ihn.',
  notDescribed: 'Nicht beschrieben',
  anyOf: 'Es kann jede der folgenden sein.',
  ratio: (ratio, uncertainty) => `Mündungskorrektur: Radius mal (${ratio} ± ${uncertainty}).`,
  names: {
    'thin-rim': 'Dünner Rand',
    'thick-rim': 'Dicker Rand',
    flange: 'Flansch',
    obstructed: 'Etwas davor',
    ideal: 'Ideal',
  },
  shapes: {
    'thin-rim': 'Ein bloßes Rohr; seine Wand ist dünner als ein Zehntel seines Radius.',
    'thick-rim': 'Eine Wand von einem Zehntel bis zur Hälfte des Radius.',
    flange: 'Eine Platte um die Mündung, oder das Rohr endet in einer Wand.',
    obstructed: 'Eine Hand, ein Stativ oder eine dicke Gabel, näher als ein Durchmesser.',
    ideal: 'Wie in Übungsaufgaben: keine Mündungskorrektur.',
  },
};

export const forks: LaterWords['forks'] = {
  heading: 'Gabeln',
  lead: 'Aufgedruckte Frequenz und ihre Standardunsicherheit; sie gelten, bis die Gabel gemessen ist.',
  pitch: (number) => `Gabel ${number}`,
  uncertainty: (number) => `± Gabel ${number}`,
  remove: 'Entfernen',
  removeNamed: (number) => `Gabel ${number} entfernen`,
  notMeasured: 'Noch nicht gemessen (siehe Prüfen).',
  measured: (frequencyHz, standardUncertaintyHz) =>
    `Gemessen ${fixed(frequencyHz, 2)} ± ${fixed(standardUncertaintyHz, 2)}\u00a0Hz; damit wird gerechnet.`,
  useStamp: 'Aufdruck verwenden',
  add: 'Gabel hinzufügen',
  choose: 'Frequenz wählen…',
  offered: (frequencyHz) => `${hertz(frequencyHz)}\u00a0Hz`,
  others: 'Andere Frequenz: Füge die nächste hinzu und ändere die Zahl.',
  caution:
    'Schlag die Gabel an Gummi oder einer Schuhsohle an, nie an Glas oder einer harten Kante. Halte eine klingende Gabel von Zähnen und Glas fern.',
};

export const places: LaterWords['places'] = {
  heading: 'Orte und Luft',
  lead: 'Was Thermometer, Hygrometer und Barometer dort zeigen. Lass leer, was du nicht abgelesen hast.',
  place: (number) => `Ort ${number}`,
  name: 'Name',
  remove: 'Entfernen',
  removeNamed: (number) => `Ort ${number} entfernen`,
  temperature: 'Lufttemperatur',
  temperatureUncertainty: 'Deren Unsicherheit',
  temperatureUncertaintyHint: 'im Rohr: Hände und Atem wärmen die Luft',
  filling: 'Gas im Rohr',
  humidity: 'Luftfeuchte',
  pressure: 'Luftdruck',
  co2: 'Kohlendioxid',
  add: 'Ort hinzufügen',
};
