import type { FirstWords } from '../catalogue.ts';

export const columnFault: FirstWords['columnFault'] = {
  mark: (number, { zeroOffset, reading, column, lowest, highest }) =>
    `Com o desvio do zero de ${zeroOffset} cm, a marca ${number} em ${reading} cm seria uma coluna de ${column} cm: as leituras devem ir de ${lowest} cm a ${highest} cm. Corrija o desvio ou o comprimento da marca.`,
  deletedMark: ({ zeroOffset, reading, column, lowest, highest }) =>
    `Com o desvio do zero de ${zeroOffset} cm, a marca apagada em ${reading} cm seria uma coluna de ${column} cm: as leituras devem ir de ${lowest} cm a ${highest} cm. Corrija o desvio, ou recupere essa marca e corrija o comprimento dela.`,
  reading: ({ zeroOffset, reading, column, lowest, highest }) =>
    `Com o desvio do zero de ${zeroOffset} cm, uma leitura de ${reading} cm seria uma coluna de ${column} cm: as leituras devem ir de ${lowest} cm a ${highest} cm. Corrija a leitura, ou o desvio do zero em Montagem.`,
};
