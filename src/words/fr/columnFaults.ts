import type { FirstWords } from '../catalogue.ts';

export const columnFault: FirstWords['columnFault'] = {
  mark: (number, { zeroOffset, reading, column, lowest, highest }) =>
    `Avec le décalage du zéro de ${zeroOffset} cm, le repère ${number} à ${reading} cm serait une colonne de ${column} cm\u00a0: les lectures doivent aller de ${lowest} cm à ${highest} cm. Corrigez le décalage, ou la longueur du repère.`,
  deletedMark: ({ zeroOffset, reading, column, lowest, highest }) =>
    `Avec le décalage du zéro de ${zeroOffset} cm, le repère supprimé à ${reading} cm serait une colonne de ${column} cm\u00a0: les lectures doivent aller de ${lowest} cm à ${highest} cm. Corrigez le décalage, ou récupérez ce repère et corrigez sa longueur.`,
  reading: ({ zeroOffset, reading, column, lowest, highest }) =>
    `Avec le décalage du zéro de ${zeroOffset} cm, une lecture de ${reading} cm serait une colonne de ${column} cm\u00a0: les lectures doivent aller de ${lowest} cm à ${highest} cm. Corrigez-la, ou le décalage du zéro sous Montage.`,
};
