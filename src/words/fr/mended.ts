import type { FirstWords } from '../catalogue.ts';

export const mended: FirstWords['mended'] = {
  note: (list) => `Hors des limites de cette page\u00a0: ${list}.`,
  quantities: {
    'inside-diameter': 'diamètre intérieur',
    'other-diameter': 'diamètre intérieur à l’autre extrémité',
    'longest-column': 'colonne la plus longue',
    'reading-uncertainty': 'incertitude de lecture',
    'fork-uncertainty': 'incertitude',
    'measured-pitch': 'fréquence mesurée ou son incertitude',
    temperature: 'température de l’air',
    humidity: 'humidité',
    pressure: 'pression',
    'carbon-dioxide': 'dioxyde de carbone',
    'temperature-uncertainty': 'incertitude de la température',
    length: 'longueur',
    order: 'ordre',
    'heard-pitch': 'fréquence entendue ou son incertitude',
  },
  items: {
    forks: (number, what) => `diapason ${number}\u00a0: ${what}`,
    places: (number, what) => `lieu ${number}\u00a0: ${what}`,
    marks: (number, what) => `repère ${number}\u00a0: ${what}`,
    deletedMarks: (number, what) => `repère supprimé ${number}\u00a0: ${what}`,
  },
  leftOut: (quantity, value) => `${quantity} ${value} (non repris)`,
  takenAs: (quantity, value, taken) => `${quantity} ${value} (pris comme ${taken})`,
};
