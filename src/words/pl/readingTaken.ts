import type { FirstWords } from '../catalogue.ts';

export const readingTaken: FirstWords['readingTaken'] = (byEarMm, atCentreMm) =>
  `${byEarMm}\u00a0mm dla długości znalezionej na słuch, ${atCentreMm}\u00a0mm tam, gdzie ta strona pokazała środek; gdy długości są co najmniej trzy, poprawia to ich rozrzut`;
