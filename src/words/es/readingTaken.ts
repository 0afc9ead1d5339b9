import type { FirstWords } from '../catalogue.ts';

export const readingTaken: FirstWords['readingTaken'] = (byEarMm, atCentreMm) =>
  `${byEarMm} mm para una longitud encontrada de oído, ${atCentreMm} mm donde esta página mostró el centro; con tres longitudes o más, su dispersión lo corrige`;
