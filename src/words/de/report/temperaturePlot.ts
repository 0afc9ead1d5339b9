import type { LaterWords } from '../../catalogue.ts';

export const temperaturePlot: LaterWords['temperaturePlot'] = {
  title: 'Schallgeschwindigkeit über der Temperatur',
  x: 'Lufttemperatur, °C',
  y: 'Schallgeschwindigkeit, m/s',
  place: (name, mps, celsius) => `${name}: ${mps}\u00a0m/s bei ${celsius}\u00a0°C`,
  places: (list) => `${list}.`,
  none: 'Noch kein Ort hat sowohl eine Geschwindigkeit als auch eine Temperatur.',
  nameless: 'Es sind zu viele Punkte, um sie im Bild zu beschriften.',
  band: 'Das Band zeigt die berechnete Geschwindigkeit, von trockener bis zu gesättigter Luft.',
};
