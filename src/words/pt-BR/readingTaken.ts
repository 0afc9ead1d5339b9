import type { FirstWords } from '../catalogue.ts';

export const readingTaken: FirstWords['readingTaken'] = (byEarMm, atCentreMm) =>
  `${byEarMm}\u00a0mm para um comprimento achado de ouvido, ${atCentreMm}\u00a0mm onde esta página mostrou o centro; com três comprimentos ou mais, a dispersão deles corrige isso`;
