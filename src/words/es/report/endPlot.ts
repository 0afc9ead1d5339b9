import type { LaterWords } from '../../catalogue.ts';

export const endPlot: LaterWords['endPlot'] = {
  title: 'Corrección de extremo frente al diámetro',
  x: 'diámetro interior del tubo, mm',
  y: 'corrección de extremo, mm',
  line: (slope, uncertainty) =>
    `La recta por los tubos sube (${slope} ± ${uncertainty}) veces el diámetro (95\u00a0%).`,
  tube: (diameterMm, endMm) => `${diameterMm}\u00a0mm: ${endMm}\u00a0mm`,
  tubes: (list) => `${list}.`,
  noTube: 'Todavía no hay ningún tubo con la corrección de extremo medida.',
  anotherTube: 'Un tubo de otro diámetro da la recta. Empieza para él un experimento nuevo, en Archivo.',
  theory: (slope) => `La línea discontinua es la teoría para un borde fino, ${slope} veces el diámetro.`,
};
