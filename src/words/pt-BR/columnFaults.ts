import type { FirstWords } from '../catalogue.ts';

export const columnFault: FirstWords['columnFault'] = {
  mark: (number, { zeroOffset, reading, column, lowest, highest }) =>
    `Com o desvio do zero de ${zeroOffset}\u00a0cm, a marca ${number} em ${reading}\u00a0cm seria uma coluna de ${column}\u00a0cm: as leituras devem ir de ${lowest}\u00a0cm a ${highest}\u00a0cm. Corrija o desvio ou o comprimento da marca.`,
  deletedMark: ({ zeroOffset, reading, column, lowest, highest }) =>
    `Com o desvio do zero de ${zeroOffset}\u00a0cm, a marca apagada em ${reading}\u00a0cm seria uma coluna de ${column}\u00a0cm: as leituras devem ir de ${lowest}\u00a0cm a ${highest}\u00a0cm. Corrija o desvio, ou recupere essa marca e corrija o comprimento dela.`,
  reading: ({ zeroOffset, reading, column, lowest, highest }) =>
    `Com o desvio do zero de ${zeroOffset}\u00a0cm, uma leitura de ${reading}\u00a0cm seria uma coluna de ${column}\u00a0cm: as leituras devem ir de ${lowest}\u00a0cm a ${highest}\u00a0cm. Corrija a leitura, ou o desvio do zero em Montagem.`,
};
