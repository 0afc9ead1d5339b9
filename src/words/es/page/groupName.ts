import type { FirstWords } from '../../catalogue.ts';

export const groupName: FirstWords['groupName'] = {
  ask: 'El nombre de vuestro grupo',
  take: 'Usarlo',
  later: 'Más tarde',
  taken: (group) =>
    `Vuestros archivos, el informe y la clase os llaman ahora «${group}». Podéis cambiar el nombre en Archivo.`,
};
