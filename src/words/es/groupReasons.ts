import type { LaterWords } from '../catalogue.ts';

export const groupReason: LaterWords['groupReason'] = {
  otherFork: (fittingHertz, notedHertz) =>
    `Sus longitudes encajan con un diapasón de ${fittingHertz}\u00a0Hz, pero está anotado ${notedHertz}\u00a0Hz. ¿Era otro diapasón?`,
  allLong: (centimetres) =>
    `Si la velocidad de la clase es correcta, todas sus longitudes tienen unos ${centimetres}\u00a0cm de más.`,
  allShort: (centimetres) =>
    `Si la velocidad de la clase es correcta, todas sus longitudes tienen unos ${centimetres}\u00a0cm de menos.`,
  checkZero: {
    closed: '¿Está el cero de la regla en el extremo cerrado del tubo? Si no, introduce el desfase del cero.',
    open: '¿Está el cero de la regla en el otro extremo del tubo? Si no, introduce el desfase del cero.',
    mixed: '¿Está el cero de la regla en el extremo de la columna? Si no, introduce el desfase del cero.',
  },
  markOff: (mark, centimetres, cause) => `${mark} (${centimetres}\u00a0cm): ${cause}`,
  allLonger: (percent) =>
    `Sus longitudes concuerdan entre sí, pero todas son un ${percent}\u00a0% demasiado largas para la velocidad de la clase. Comprueba la frecuencia del diapasón, la regla y la temperatura.`,
  allShorter: (percent) =>
    `Sus longitudes concuerdan entre sí, pero todas son un ${percent}\u00a0% demasiado cortas para la velocidad de la clase. Comprueba la frecuencia del diapasón, la regla y la temperatura.`,
};
