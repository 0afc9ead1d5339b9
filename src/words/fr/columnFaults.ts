import type { FirstWords } from '../catalogue.ts';

export const columnFault: FirstWords['columnFault'] = {
  mark: (number, { zeroOffset, reading, column, lowest, highest }) =>
    `Avec le décalage du zéro de ${zeroOffset}\u00a0cm, le repère ${number} à ${reading}\u00a0cm serait une colonne de ${column}\u00a0cm\u00a0: les lectures doivent aller de ${lowest}\u00a0cm à ${highest}\u00a0cm. Corrigez le décalage, ou la longueur du repère.`,
  deletedMark: ({ zeroOffset, reading, column, lowest, highest }) =>
    `Avec le décalage du zéro de ${zeroOffset}\u00a0cm, le repère supprimé à ${reading}\u00a0cm serait une colonne de ${column}\u00a0cm\u00a0: les lectures doivent aller de ${lowest}\u00a0cm à ${highest}\u00a0cm. Corrigez le décalage, ou récupérez ce repère et corrigez sa longueur.`,
  reading: ({ zeroOffset, reading, column, lowest, highest }) =>
    `Avec le décalage du zéro de ${zeroOffset}\u00a0cm, une lecture de ${reading}\u00a0cm serait une colonne de ${column}\u00a0cm\u00a0: les lectures doivent aller de ${lowest}\u00a0cm à ${highest}\u00a0cm. Corrigez-la, ou le décalage du zéro sous Montage.`,
};
