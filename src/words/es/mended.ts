import type { FirstWords } from '../catalogue.ts';

export const mended: FirstWords['mended'] = {
  note: (list) => `Fuera de los límites de esta página: ${list}.`,
  quantities: {
    'inside-diameter': 'diámetro interior',
    'other-diameter': 'diámetro interior en el otro extremo',
    'longest-column': 'columna más larga',
    'reading-uncertainty': 'incertidumbre de lectura',
    'fork-uncertainty': 'incertidumbre',
    'measured-pitch': 'frecuencia medida o su incertidumbre',
    temperature: 'temperatura del aire',
    humidity: 'humedad',
    pressure: 'presión',
    'carbon-dioxide': 'dióxido de carbono',
    'temperature-uncertainty': 'incertidumbre de la temperatura',
    length: 'longitud',
    order: 'orden',
    'heard-pitch': 'frecuencia oída o su incertidumbre',
  },
  items: {
    forks: (number, what) => `diapasón ${number}: ${what}`,
    places: (number, what) => `lugar ${number}: ${what}`,
    marks: (number, what) => `marca ${number}: ${what}`,
    deletedMarks: (number, what) => `marca borrada ${number}: ${what}`,
  },
  leftOut: (quantity, value) => `${quantity} ${value} (no se tomó)`,
  takenAs: (quantity, value, taken) => `${quantity} ${value} (se tomó ${taken})`,
};
