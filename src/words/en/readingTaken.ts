/** What is taken for a length whose uncertainty nobody stated; stands after a colon. */
export const readingTaken = (byEarMm: string, atCentreMm: string): string =>
  `${byEarMm} mm for a length found by ear, ${atCentreMm} mm where this page showed the centre; with three lengths or more, their scatter corrects it`;
