import type { FirstWords } from '../../catalogue.ts';

export const field: FirstWords['field'] = {
  length: 'Comprimento',
  centimetres: 'cm',
  changeSign: 'Acima ou abaixo de zero',
  dash: 'Traço, depois um segundo comprimento',
  take: 'Usar mesmo assim',
  stillWaits: 'Você digitou isto antes, e ainda não foi usado. Aperte Enter para usar.',
  forget: 'Limpar',
  tooLong: (characters, most) =>
    `Não foi colado: o campo teria ${characters} caracteres, e o máximo é ${most}. Cole um texto mais curto.`,
  workingOut: 'calculando…',
};
