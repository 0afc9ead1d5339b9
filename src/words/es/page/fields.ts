import type { FirstWords } from '../../catalogue.ts';

export const field: FirstWords['field'] = {
  length: 'Longitud',
  centimetres: 'cm',
  changeSign: 'Por encima o por debajo de cero',
  dash: 'Guion, y después una segunda longitud',
  take: 'Usarlo igualmente',
  stillWaits: 'Lo escribiste antes y todavía no se usa. Pulsa Intro para usarlo.',
  forget: 'Quitarlo',
  tooLong: (characters, most) =>
    `No se ha pegado: el campo tendría ${characters} caracteres y admite ${most}. Pega un texto más corto.`,
  workingOut: 'calculando…',
};
