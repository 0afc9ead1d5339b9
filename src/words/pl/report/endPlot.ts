import type { LaterWords } from '../../catalogue.ts';

export const endPlot: LaterWords['endPlot'] = {
  title: 'Zależność poprawki na końcu rury od średnicy',
  x: 'średnica wewnętrzna rury, mm',
  y: 'poprawka na końcu rury, mm',
  line: (slope, uncertainty) =>
    `Prosta przez punkty rur ma nachylenie ${slope} ± ${uncertainty} (95\u00a0%): o tyle mm rośnie poprawka na każdy mm średnicy.`,
  tube: (diameterMm, endMm) => `${diameterMm}\u00a0mm: ${endMm}\u00a0mm`,
  tubes: (list) => `${list}.`,
  noTube: 'Nie ma jeszcze rury ze zmierzoną poprawką na końcu.',
  anotherTube:
    'Do wyznaczenia prostej potrzeba rury o innej średnicy. Zacznij dla niej nowe doświadczenie w widoku Archiwum.',
  theory: (slope) => `Linia przerywana to teoria dla cienkiego brzegu, ${slope} średnicy.`,
};
