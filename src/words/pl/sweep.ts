import type { LaterWords } from '../catalogue.ts';
import { counted, ordinal, plural } from './grammar.ts';

export const sweep: LaterWords['sweep'] = {
  order: (order) => `${order}`,
  noOrder: 'brak',
  outlier: 'wartość odstająca',
  basis: (resonances, factor, endMm) =>
    `95\u00a0%, k = ${factor}, z ${counted(resonances, 'rezonansu', 'rezonansów', 'rezonansów')}. Poprawka na końcu rury, ${endMm}\u00a0mm, jest przewidywana: jedna długość nie może jej zmierzyć.`,
  wallsCorrected: 'Spowolnienie fali przez ściankę uwzględniono.',
  noDiameter:
    'Zanotuj średnicę rury: bez niej poprawka na końcu rury jest tylko przyjęta, a spowolnienie przez ściankę nieuwzględnione.',
  lost: (seconds) => `Zgubiono ${seconds}\u00a0s dźwięku.`,
  lostMoment: 'Dźwięk urwał się na chwilę.',
  noneNear: 'Nie było tam żadnego rezonansu.',
  nearLost: (resonances, hertz) =>
    `${plural(resonances, 'Rezonans blisko', 'Rezonanse blisko', 'Rezonanse blisko')} ${hertz}\u00a0Hz nie ${plural(resonances, 'liczy', 'liczą', 'liczą')} się. Zamknij inne programy i zacznij przemiatanie od nowa.`,
  note: (cm, list, speed) => `Przemiatanie przy ${cm}\u00a0cm: ${list}; prędkość ${speed}.`,
  found: (order, frequency) => `${ordinal(order)} rezonans ${frequency}`,
  remarks: {
    practice: 'Symulacja na słupie do ćwiczeń.',
    unproven: 'Poziomu nie sprawdzono.',
    doubtful: 'Poziom jest wątpliwy.',
  },
  endsBelowStart: 'Przemiatanie musi się kończyć przy wyższej częstotliwości, niż się zaczyna.',
  beyondTheory: (mm, highestHz, toHz) =>
    `W ćwiczeniu rurę o średnicy ${mm}\u00a0mm można przemiatać do ${highestHz}\u00a0Hz, a nie do ${toHz}\u00a0Hz: powyżej nie ma teorii jej otwartego końca. Zakończ przemiatanie wcześniej albo weź węższą rurę.`,
};
