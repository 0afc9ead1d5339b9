import type { LaterWords } from '../catalogue.ts';

export const groupReason: LaterWords['groupReason'] = {
  otherFork: (fittingHertz, notedHertz) =>
    `Os comprimentos se encaixam em um diapasão de ${fittingHertz}\u00a0Hz, mas foram anotados ${notedHertz}\u00a0Hz. Era outro diapasão?`,
  allLong: (centimetres) =>
    `Se a velocidade da turma estiver certa, todos os comprimentos têm cerca de ${centimetres}\u00a0cm a mais.`,
  allShort: (centimetres) =>
    `Se a velocidade da turma estiver certa, todos os comprimentos têm cerca de ${centimetres}\u00a0cm a menos.`,
  checkZero: {
    closed: 'O zero da régua está na extremidade fechada do tubo? Se não, digite o desvio do zero.',
    open: 'O zero da régua está na outra extremidade do tubo? Se não, digite o desvio do zero.',
    mixed: 'O zero da régua está na extremidade da coluna? Se não, digite o desvio do zero.',
  },
  markOff: (mark, centimetres, cause) => `${mark} (${centimetres}\u00a0cm): ${cause}`,
  allLonger: (percent) =>
    `Os comprimentos concordam entre si, mas todos são ${percent}\u00a0% longos demais para a velocidade da turma. Confira a frequência do diapasão, a régua e a temperatura.`,
  allShorter: (percent) =>
    `Os comprimentos concordam entre si, mas todos são ${percent}\u00a0% curtos demais para a velocidade da turma. Confira a frequência do diapasão, a régua e a temperatura.`,
};
