import type { FirstWords } from '../catalogue.ts';

export const mended: FirstWords['mended'] = {
  note: (list) => `Fora dos limites desta página: ${list}.`,
  quantities: {
    'inside-diameter': 'diâmetro interno',
    'other-diameter': 'diâmetro interno na outra extremidade',
    'longest-column': 'coluna mais longa',
    'reading-uncertainty': 'incerteza de leitura',
    'fork-uncertainty': 'incerteza',
    'measured-pitch': 'frequência medida ou sua incerteza',
    temperature: 'temperatura do ar',
    humidity: 'umidade',
    pressure: 'pressão',
    'carbon-dioxide': 'dióxido de carbono',
    'temperature-uncertainty': 'incerteza da temperatura',
    length: 'comprimento',
    order: 'ordem',
    'heard-pitch': 'frequência ouvida ou sua incerteza',
  },
  items: {
    forks: (number, what) => `diapasão ${number}: ${what}`,
    places: (number, what) => `local ${number}: ${what}`,
    marks: (number, what) => `marca ${number}: ${what}`,
    deletedMarks: (number, what) => `marca apagada ${number}: ${what}`,
  },
  leftOut: (quantity, value) => `${quantity} ${value} (não foi usado)`,
  takenAs: (quantity, value, taken) => `${quantity} ${value} (trocado por ${taken})`,
};
