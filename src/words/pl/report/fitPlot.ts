import type { LaterWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const fitPlot: LaterWords['fitPlot'] = {
  title: 'Zależność długości od czasu przejścia dźwięku',
  x: 'liczba połówek fali w słupie ÷ (2 × częstotliwość), ms',
  y: 'długość, cm',
  label: (order, hertz) => `n = ${order}, ${hertz}\u00a0Hz`,
  shows: (marks, endMm) =>
    `${counted(marks, 'znacznik', 'znaczniki', 'znaczników')}. Nachylenie prostej to prędkość. Prosta zaczyna się tyle poniżej zera, ile wynosi poprawka na końcu rury, ${endMm}\u00a0mm (przy słupach otwartych: dwie poprawki).`,
};

export const residualPlot: LaterWords['residualPlot'] = {
  title: 'Odchylenia od dopasowania',
  x: 'długość, cm',
  y: 'zmierzona − dopasowana, mm',
  residual: (cm, mm) => `${cm}\u00a0cm: ${mm}\u00a0mm`,
  residuals: (list) => `Długość zmierzona minus dopasowana: ${list}.`,
  noOutliers: 'Wartości odstających tu nie ma.',
};
