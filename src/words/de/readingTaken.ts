import type { FirstWords } from '../catalogue.ts';

export const readingTaken: FirstWords['readingTaken'] = (byEarMm, atCentreMm) =>
  `${byEarMm} mm für eine nach Gehör gefundene Länge, ${atCentreMm} mm, wo diese Seite die Mitte zeigte; ab drei Längen korrigiert ihre Streuung das`;
