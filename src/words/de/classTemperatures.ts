import type { LaterWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const classTemperatures: LaterWords['classTemperatures'] = {
  title: 'Geschwindigkeit und Temperatur, Gruppe für Gruppe',
  x: 'Lufttemperatur, °C',
  y: 'gemessene Schallgeschwindigkeit, m/s',
  shown: (groups) =>
    `${counted(groups, 'Gruppe', 'Gruppen')} mit der Temperatur und der Geschwindigkeit, die sie gemessen haben, und dem 95-%-Intervall.`,
  outlying: 'Ein Kreuz ist eine Gruppe, deren Ergebnis ein Ausreißer ist.',
  nameless: 'Nur Ausreißer sind hier mit Namen beschriftet.',
  band: 'Das Band zeigt die berechnete Geschwindigkeit, von trockener bis zu gesättigter Luft.',
};
