import type { FirstWords } from '../catalogue.ts';

export const mended: FirstWords['mended'] = {
  note: (list) => `Außerhalb dessen, womit diese Seite arbeitet: ${list}.`,
  quantities: {
    'inside-diameter': 'Innendurchmesser',
    'other-diameter': 'Innendurchmesser am anderen Ende',
    'longest-column': 'längste Säule',
    'reading-uncertainty': 'Ableseunsicherheit',
    'fork-uncertainty': 'Unsicherheit',
    'measured-pitch': 'gemessene Frequenz oder ihre Unsicherheit',
    temperature: 'Lufttemperatur',
    humidity: 'Luftfeuchte',
    pressure: 'Luftdruck',
    'carbon-dioxide': 'Kohlendioxid',
    'temperature-uncertainty': 'Unsicherheit der Temperatur',
    length: 'Länge',
    order: 'Ordnung',
    'heard-pitch': 'gehörte Frequenz oder ihre Unsicherheit',
  },
  items: {
    forks: (number, what) => `Gabel ${number}: ${what}`,
    places: (number, what) => `Ort ${number}: ${what}`,
    marks: (number, what) => `Marke ${number}: ${what}`,
    deletedMarks: (number, what) => `gelöschte Marke ${number}: ${what}`,
  },
  leftOut: (quantity, value) => `${quantity} ${value} (weggelassen)`,
  takenAs: (quantity, value, taken) => `${quantity} ${value} (ersetzt durch ${taken})`,
};
