import type { FirstWords } from '../catalogue.ts';

export const nextMark: FirstWords['nextMark'] = {
  resonance: {
    closed: (order, hertz) => `rezonans rzędu ${order}, kamerton ${hertz}\u00a0Hz, słup zamknięty`,
    open: (order, hertz) => `rezonans rzędu ${order}, kamerton ${hertz}\u00a0Hz, słup otwarty`,
  },
  near: (resonance, cm) => `${resonance}, około ${cm}\u00a0cm`,
  again: (resonance) => `${resonance} (odczytaj ponownie)`,
  gain: (percent) => `Niepewność mniejsza o ${percent}\u00a0%.`,
  left: (mps) => `Niepewność standardowa wyniesie wtedy ${mps}\u00a0m/s.`,
  hint: (resonance, percent) => `Najlepiej teraz: ${resonance}. Niepewność zmaleje o ${percent}\u00a0%.`,
};
