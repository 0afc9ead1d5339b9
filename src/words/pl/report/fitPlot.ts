import type { LaterWords } from '../../catalogue.ts';
import { counted, ordinal } from '../grammar.ts';

export const fitPlot: LaterWords['fitPlot'] = {
  title: 'Zależność długości od czasu, w którym dźwięk przebiega słup',
  x: 'liczba połówek fali w słupie ÷ (2 × częstotliwość), ms',
  y: 'długość, cm',
  label: (order, hertz) => `${ordinal(order)}, ${hertz} Hz`,
  shows: (marks, endMm) =>
    `${counted(marks, 'znacznik', 'znaczniki', 'znaczników')}. Nachylenie prostej to prędkość. Prosta zaczyna się poniżej zera: o poprawkę na końcu rury ${endMm} mm, a przy słupach otwartych o dwie.`,
};

export const residualPlot: LaterWords['residualPlot'] = {
  title: 'Odchylenia od dopasowania',
  x: 'długość, cm',
  y: 'zmierzona − dopasowana, mm',
  residual: (cm, mm) => `${cm} cm: ${mm} mm`,
  residuals: (list) => `Długość zmierzona minus dopasowana: ${list}.`,
  noOutliers: 'Wartości odstających tu nie ma.',
};
