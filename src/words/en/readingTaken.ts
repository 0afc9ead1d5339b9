/** What is taken for a length whose uncertainty nobody stated. */
export const readingTaken = (byEarMm: string, atCentreMm: string): string =>
  `${byEarMm} mm is taken for places found by ear, ${atCentreMm} mm where the bench showed the centre; from three lengths on their own scatter corrects it`;
