import type { LaterWords } from '../../catalogue.ts';

export const compare: LaterWords['compare'] = {
  region: 'Comparar',
  heading: '¿Es real la diferencia?',
  lead: 'Los errores que comparten los dos resultados (la misma regla, el mismo diapasón) se compensan. Solo cuentan los demás.',
  by: 'Comparar',
  ways: {
    place: 'lugares (y sus temperaturas)',
    fork: 'diapasones',
    ends: 'columnas cerradas y abiertas',
  },
  theoryHidden: 'Esta clase oculta la velocidad prevista.',
  noMark: 'Ninguna marca tiene todavía su longitud. Marca primero una resonancia en Medir.',
  onlyOne: {
    place: (name) =>
      `Por ahora solo está «${name}», sin nada con qué compararlo. Añade un lugar en Montaje, elígelo encima de la columna y marca allí una resonancia.`,
    fork: (name) =>
      `Por ahora solo está «${name}», sin nada con qué compararlo. Añade un diapasón en Montaje, elígelo encima de la columna y marca con él una resonancia.`,
    ends: (name) =>
      `Por ahora solo está «${name}», sin nada con qué compararlo. Elige el otro tipo de columna encima de la imagen y marca en ella una resonancia.`,
  },
  manyPairs: (groups) =>
    `Con ${groups} se forman ${(groups * (groups - 1)) / 2} pares. Elige uno para compararlo con cada uno de los demás.`,
  against: 'Comparar con los demás',
};

export const temperatures: LaterWords['temperatures'] = {
  heading: 'Velocidad frente a la temperatura',
  lead: 'Un punto por lugar. La banda es la velocidad prevista, de aire seco a aire saturado.',
  columns: { place: 'Lugar', speed: 'Velocidad', theory: 'Diferencia con la prevista' },
  noSpeed: '—',
  noTemperature: 'temperatura sin anotar',
};

export const ends: LaterWords['ends'] = {
  heading: 'Corrección de extremo frente al diámetro',
  lead: 'Un punto por tubo. Mide cada tubo en un experimento propio; la corrección de extremo necesita resonancias de dos órdenes.',
};

export const turned: LaterWords['turned'] = {
  heading: 'A la inversa',
  lead: 'Las mismas marcas, con otra magnitud como incógnita.',
  fork: 'Velocidad conocida, diapasón desconocido',
  temperature: 'Diapasón conocido, temperatura desconocida',
  gas: 'Diapasón y temperatura conocidos, gas desconocido',
  ends: 'Corrección de extremo como parte del diámetro',
  pending: '…',
};
