import type { LaterWords } from '../catalogue.ts';

export const comparison: LaterWords['comparison'] = {
  faster: (one, other, mps, uncertaintyMps) =>
    `„${one}” w porównaniu z „${other}”: o ${mps} m/s szybciej, ± ${uncertaintyMps} m/s (95 %). Różnica jest rzeczywista.`,
  slower: (one, other, mps, uncertaintyMps) =>
    `„${one}” w porównaniu z „${other}”: o ${mps} m/s wolniej, ± ${uncertaintyMps} m/s (95 %). Różnica jest rzeczywista.`,
  alike: (one, other, mps, uncertaintyMps) =>
    `„${one}” w porównaniu z „${other}”: różnica ${mps} m/s, ± ${uncertaintyMps} m/s (95 %). Te znaczniki nie pokazują rzeczywistej różnicy.`,
  agrees: {
    faster: (mps) => `Dla ich powietrza teoria przewiduje o ${mps} m/s szybciej. Jedno zgadza się z drugim.`,
    slower: (mps) => `Dla ich powietrza teoria przewiduje o ${mps} m/s wolniej. Jedno zgadza się z drugim.`,
    alike: 'Dla ich powietrza teoria nie przewiduje różnicy. Jedno zgadza się z drugim.',
  },
  disagrees: {
    faster: (mps) =>
      `Dla ich powietrza teoria przewiduje o ${mps} m/s szybciej. Jedno nie zgadza się z drugim.`,
    slower: (mps) =>
      `Dla ich powietrza teoria przewiduje o ${mps} m/s wolniej. Jedno nie zgadza się z drugim.`,
    alike: 'Dla ich powietrza teoria nie przewiduje różnicy. Jedno nie zgadza się z drugim.',
  },
  noResult: (group, warning) => `${group}: ${warning}`,
  fork: (hertz) => `kamerton ${hertz} Hz`,
  ends: { closed: 'słup zamknięty', open: 'słup otwarty' },
};
