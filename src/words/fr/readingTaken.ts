import type { FirstWords } from '../catalogue.ts';

export const readingTaken: FirstWords['readingTaken'] = (byEarMm, atCentreMm) =>
  `${byEarMm} mm pour une longueur trouvée à l’oreille, ${atCentreMm} mm là où cette page montrait le centre ; à partir de trois longueurs, leur dispersion corrige cette valeur`;
