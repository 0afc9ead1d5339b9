import type { FirstWords } from '../catalogue.ts';

export const readingTaken: FirstWords['readingTaken'] = (byEarMm, atCentreMm) =>
  `${byEarMm}\u00a0mm para una longitud encontrada de oído, ${atCentreMm}\u00a0mm donde esta página mostró el centro; con tres longitudes o más, su dispersión lo corrige`;
