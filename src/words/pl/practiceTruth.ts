import type { LaterWords } from '../catalogue.ts';

export const practiceTruth: LaterWords['practiceTruth'] = {
  speed: (mps) => `Prawdziwa prędkość to ${mps} m/s.`,
  covered: (off, percent) =>
    `Twój wynik minus wartość prawdziwa: ${off} m/s (${percent} %), w granicach jego niepewności.`,
  notCovered: (off, percent) =>
    `Twój wynik minus wartość prawdziwa: ${off} m/s (${percent} %), więcej niż wynosi jego niepewność.`,
  fork: (hertz) => `Prawdziwa częstotliwość kamertonu to ${hertz} Hz.`,
  whyLoudest:
    'Najgłośniejsze miejsce nie leży dokładnie w rezonansie: mikrofon słyszy też sam kamerton, a kamerton i słup razem są najgłośniejsze trochę obok.',
};

export const practiceReading: LaterWords['practiceReading'] = {
  typed: (mark, centimetres) => `${mark}: wpisano ${centimetres} cm.`,
  loudestLonger: (resonance, loudest, apartMm) =>
    `Słup rezonuje przy ${resonance} cm, a najgłośniej brzmi przy ${loudest} cm, gdy jest o ${apartMm} mm dłuższy.`,
  loudestShorter: (resonance, loudest, apartMm) =>
    `Słup rezonuje przy ${resonance} cm, a najgłośniej brzmi przy ${loudest} cm, gdy jest o ${apartMm} mm krótszy.`,
  atResonance: 'Dobry odczyt, w rezonansie.',
  atLoudest: 'Dobry odczyt, w najgłośniejszym miejscu.',
  between: 'Dobry odczyt, między jednym a drugim.',
  tooLong: (millimetres) => `Twoja długość jest o ${millimetres} mm za duża jak na ten rezonans.`,
  tooShort: (millimetres) => `Twoja długość jest o ${millimetres} mm za mała jak na ten rezonans.`,
};
