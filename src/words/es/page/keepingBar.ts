import type { FirstWords } from '../../catalogue.ts';

export const keepingBar: FirstWords['keepingBar'] = {
  elsewhere: 'Este experimento está abierto en otra pestaña. Esta solo lo muestra y sigue a la otra.',
  workHere: 'Trabajar aquí',
  openCopy: 'Abrir una copia',
  apart: 'Este experimento se ha cambiado en otra pestaña. Los cambios que hagas aquí no se guardarán.',
  goOn: 'Seguir con una copia',
  useOther: 'Usar lo que guardó la otra pestaña',
  refused: (why) =>
    `Tu trabajo solo está en esta pestaña: ${why} Puedes seguir. Guarda el archivo antes de irte.`,
  save: 'Guardar el archivo',
  tryAgain: 'Reintentar',
  sound: (used, limit) => ({
    before: '',
    part: '● Se está guardando el sonido',
    after: ` mientras escuchas: ${used} de ${limit}`,
  }),
  stopSaving: 'Dejar de guardar sonido',
  newer: 'Hay una versión más nueva de esta página. Actualízala cuando quieras; tus medidas están guardadas.',
  newerBusy:
    'Hay una versión más nueva de esta página. Cierra antes sus otras pestañas: aún usan la antigua.',
  useNewer: 'Actualizar ahora',
};
