import type { LaterWords } from '../catalogue.ts';

export const practiceTruth: LaterWords['practiceTruth'] = {
  speed: (mps) => `Prawdziwa prędkość to ${mps}\u00a0m/s.`,
  covered: (off, percent) =>
    `Twój wynik minus wartość prawdziwa: ${off}\u00a0m/s (${percent}\u00a0%), w granicach jego niepewności.`,
  notCovered: (off, percent) =>
    `Twój wynik minus wartość prawdziwa: ${off}\u00a0m/s (${percent}\u00a0%), więcej niż wynosi jego niepewność.`,
  fork: (hertz) => `Prawdziwa częstotliwość kamertonu to ${hertz}\u00a0Hz.`,
  whyLoudest:
    'Najgłośniejsze miejsce nie leży dokładnie w rezonansie: mikrofon słyszy też sam kamerton, a kamerton i słup razem są najgłośniejsze trochę obok.',
};

export const practiceReading: LaterWords['practiceReading'] = {
  typed: (mark, centimetres) => `${mark}: wpisano ${centimetres}\u00a0cm.`,
  loudestLonger: (resonance, loudest, apartMm) =>
    `Słup rezonuje przy ${resonance}\u00a0cm, a najgłośniej brzmi przy ${loudest}\u00a0cm, gdy jest o ${apartMm}\u00a0mm dłuższy.`,
  loudestShorter: (resonance, loudest, apartMm) =>
    `Słup rezonuje przy ${resonance}\u00a0cm, a najgłośniej brzmi przy ${loudest}\u00a0cm, gdy jest o ${apartMm}\u00a0mm krótszy.`,
  atResonance: 'Dobry odczyt, w rezonansie.',
  atLoudest: 'Dobry odczyt, w najgłośniejszym miejscu.',
  between: 'Dobry odczyt, między jednym a drugim.',
  tooLong: (millimetres) => `Twoja długość jest o ${millimetres}\u00a0mm za duża jak na ten rezonans.`,
  tooShort: (millimetres) => `Twoja długość jest o ${millimetres}\u00a0mm za mała jak na ten rezonans.`,
};
