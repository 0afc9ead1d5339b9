import type { LaterWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const handIn: LaterWords['handIn'] = {
  heading: 'Entregar',
  lead: 'Muestra un código con las marcas que cuentan, el montaje y el nombre del grupo. El profesor lo lee en esta pantalla con un móvil, una tableta o la vista Clase. No se envía nada.',
  none: 'Ninguna marca tiene todavía su longitud.',
  unnamed: 'Vuestro grupo aún no tiene nombre. Ponedlo en «Este experimento».',
  show: 'Mostrar el código',
  hide: 'Ocultar el código',
  codeName: 'el resultado de este grupo',
  holds: (group, marks) =>
    `${group}: ${counted(marks, 'marca', 'marcas')}. El código no contiene notas, ni sonido, ni más nombre que el del grupo.`,
  link: 'Lo mismo como enlace',
};
