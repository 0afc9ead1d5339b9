import type { LaterWords } from '../../catalogue.ts';

export const leaving: LaterWords['leaving'] = {
  heading: (title) => `¿Dejar «${title}» sin guardarlo?`,
  message:
    'Lo que escribiste está solo en esta pestaña. Cuando otro experimento ocupe su lugar se perderá, salvo que antes guardes su archivo.',
  messageWith: (why) =>
    `Lo que escribiste está solo en esta pestaña: ${why} Cuando otro experimento ocupe su lugar se perderá, salvo que antes guardes su archivo.`,
  no: 'Seguir con él',
  saveFirst: 'Guardar el archivo y seguir',
  yes: 'Seguir sin guardarlo',
};
