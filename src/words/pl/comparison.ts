import type { LaterWords } from '../catalogue.ts';

export const comparison: LaterWords['comparison'] = {
  faster: (one, other, mps, uncertaintyMps) =>
    `„${one}” w porównaniu z „${other}”: prędkość większa o ${mps} ± ${uncertaintyMps}\u00a0m/s (95\u00a0%). Różnica jest rzeczywista.`,
  slower: (one, other, mps, uncertaintyMps) =>
    `„${one}” w porównaniu z „${other}”: prędkość mniejsza o ${mps} ± ${uncertaintyMps}\u00a0m/s (95\u00a0%). Różnica jest rzeczywista.`,
  alike: (one, other, mps, uncertaintyMps) =>
    `„${one}” w porównaniu z „${other}”: różnica prędkości ${mps} ± ${uncertaintyMps}\u00a0m/s (95\u00a0%). Te znaczniki nie pokazują rzeczywistej różnicy.`,
  agrees: {
    faster: (mps) =>
      `Teoria przewiduje dla ich powietrza prędkość o ${mps}\u00a0m/s większą. Jedno zgadza się z drugim.`,
    slower: (mps) =>
      `Teoria przewiduje dla ich powietrza prędkość o ${mps}\u00a0m/s mniejszą. Jedno zgadza się z drugim.`,
    alike: 'Dla ich powietrza teoria nie przewiduje różnicy. Jedno zgadza się z drugim.',
  },
  disagrees: {
    faster: (mps) =>
      `Teoria przewiduje dla ich powietrza prędkość o ${mps}\u00a0m/s większą. Jedno nie zgadza się z drugim.`,
    slower: (mps) =>
      `Teoria przewiduje dla ich powietrza prędkość o ${mps}\u00a0m/s mniejszą. Jedno nie zgadza się z drugim.`,
    alike: 'Dla ich powietrza teoria nie przewiduje różnicy. Jedno nie zgadza się z drugim.',
  },
  noResult: (group, warning) => `${group}: ${warning}`,
  fork: (hertz) => `kamerton ${hertz}\u00a0Hz`,
  ends: { closed: 'słup zamknięty', open: 'słup otwarty' },
};
