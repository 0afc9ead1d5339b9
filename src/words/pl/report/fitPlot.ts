import type { LaterWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const fitPlot: LaterWords['fitPlot'] = {
  title: 'Zależność długości od czasu przejścia dźwięku',
  x: 'liczba połówek fali w słupie ÷ (2 × częstotliwość), ms',
  y: 'długość, cm',
  label: (order, hertz) => `n = ${order}, ${hertz} Hz`,
  shows: (marks, endMm) =>
    `${counted(marks, 'znacznik', 'znaczniki', 'znaczników')}. Nachylenie prostej to prędkość. Prosta zaczyna się tyle poniżej zera, ile wynosi poprawka na końcu rury, ${endMm} mm (przy słupach otwartych: dwie poprawki).`,
};

export const residualPlot: LaterWords['residualPlot'] = {
  title: 'Odchylenia od dopasowania',
  x: 'długość, cm',
  y: 'zmierzona − dopasowana, mm',
  residual: (cm, mm) => `${cm} cm: ${mm} mm`,
  residuals: (list) => `Długość zmierzona minus dopasowana: ${list}.`,
  noOutliers: 'Wartości odstających tu nie ma.',
};
