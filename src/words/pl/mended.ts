import type { FirstWords } from '../catalogue.ts';

export const mended: FirstWords['mended'] = {
  note: (list) => `Poza granicami tej strony: ${list}.`,
  quantities: {
    'inside-diameter': 'średnica wewnętrzna',
    'other-diameter': 'średnica wewnętrzna na drugim końcu',
    'longest-column': 'najdłuższy słup',
    'reading-uncertainty': 'niepewność odczytu',
    'fork-uncertainty': 'niepewność',
    'measured-pitch': 'zmierzona częstotliwość lub jej niepewność',
    temperature: 'temperatura powietrza',
    humidity: 'wilgotność',
    pressure: 'ciśnienie',
    'carbon-dioxide': 'dwutlenek węgla',
    'temperature-uncertainty': 'niepewność temperatury',
    length: 'długość',
    order: 'rząd',
    'heard-pitch': 'usłyszana częstotliwość lub jej niepewność',
  },
  items: {
    forks: (number, what) => `kamerton ${number}: ${what}`,
    places: (number, what) => `miejsce ${number}: ${what}`,
    marks: (number, what) => `znacznik ${number}: ${what}`,
    deletedMarks: (number, what) => `usunięty znacznik ${number}: ${what}`,
  },
  leftOut: (quantity, value) => `${quantity} ${value} (nie przyjęto)`,
  takenAs: (quantity, value, taken) => `${quantity} ${value} (przyjęto ${taken})`,
};
