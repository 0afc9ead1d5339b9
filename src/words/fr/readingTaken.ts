import type { FirstWords } from '../catalogue.ts';

export const readingTaken: FirstWords['readingTaken'] = (byEarMm, atCentreMm) =>
  `${byEarMm}\u00a0mm pour une longueur trouvée à l’oreille, ${atCentreMm}\u00a0mm là où cette page montrait le centre ; à partir de trois longueurs, leur dispersion corrige cette valeur`;
