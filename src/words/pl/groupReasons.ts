import type { LaterWords } from '../catalogue.ts';

export const groupReason: LaterWords['groupReason'] = {
  otherFork: (fittingHertz, notedHertz) =>
    `Długości tej grupy pasują do kamertonu ${fittingHertz}\u00a0Hz, a zanotowano ${notedHertz}\u00a0Hz. Czy to był inny kamerton?`,
  allLong: (centimetres) =>
    `Jeśli prędkość klasy jest dobra, wszystkie długości tej grupy są za duże o około ${centimetres}\u00a0cm.`,
  allShort: (centimetres) =>
    `Jeśli prędkość klasy jest dobra, wszystkie długości tej grupy są za małe o około ${centimetres}\u00a0cm.`,
  checkZero: {
    closed: 'Czy zero linijki jest przy zamkniętym końcu rury? Jeśli nie, wpisz przesunięcie zera.',
    open: 'Czy zero linijki jest przy drugim końcu rury? Jeśli nie, wpisz przesunięcie zera.',
    mixed: 'Czy zero linijki jest przy końcu słupa? Jeśli nie, wpisz przesunięcie zera.',
  },
  markOff: (mark, centimetres, cause) => `${mark} (${centimetres}\u00a0cm): ${cause}`,
  allLonger: (percent) =>
    `Długości tej grupy zgadzają się ze sobą, ale przy prędkości klasy wszystkie są o ${percent}\u00a0% za duże. Sprawdź częstotliwość kamertonu, linijkę i temperaturę.`,
  allShorter: (percent) =>
    `Długości tej grupy zgadzają się ze sobą, ale przy prędkości klasy wszystkie są o ${percent}\u00a0% za małe. Sprawdź częstotliwość kamertonu, linijkę i temperaturę.`,
};
