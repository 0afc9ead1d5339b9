import type { FirstWords } from '../catalogue.ts';

export const linkFault: FirstWords['linkFault'] = {
  damaged: 'Este enlace está dañado. Pídelo otra vez y cópialo entero.',
  newer:
    'Este enlace lo hizo una versión más nueva de esta página. Recarga la página con conexión y abre el enlace otra vez.',
  noInflate:
    'Este navegador es demasiado antiguo para leer el enlace. Usa Firefox 113, Safari 16.4, Chrome 80 o posterior.',
  record: (why) => `Este enlace de la clase no se puede usar: ${why} Pide a tu profesor que haga uno nuevo.`,
};
