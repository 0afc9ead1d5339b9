import type { FirstWords } from '../catalogue.ts';

export const readingTaken: FirstWords['readingTaken'] = (byEarMm, atCentreMm) =>
  `${byEarMm}\u00a0mm bei einer nach Gehör gefundenen Länge, ${atCentreMm}\u00a0mm, wo diese Seite die Mitte gezeigt hat; ab drei Längen wird das nach ihrer Streuung korrigiert`;
