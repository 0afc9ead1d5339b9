import type { LaterWords } from '../../catalogue.ts';

export const leaving: LaterWords['leaving'] = {
  heading: (title) => `Sair de “${title}” sem salvar?`,
  message:
    'O que você digitou está só nesta aba. Quando outro experimento ocupar o lugar dele, isso se perde, a menos que você salve antes o arquivo.',
  messageWith: (why) =>
    `O que você digitou está só nesta aba: ${why} Quando outro experimento ocupar o lugar dele, isso se perde, a menos que você salve antes o arquivo.`,
  no: 'Ficar com ele',
  saveFirst: 'Salvar o arquivo e continuar',
  yes: 'Continuar sem salvar',
};
