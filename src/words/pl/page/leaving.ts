import type { LaterWords } from '../../catalogue.ts';

export const leaving: LaterWords['leaving'] = {
  heading: (title) => `Zostawić „${title}” bez zapisania?`,
  message:
    'To, co wpisano, jest tylko w tej karcie. Gdy inne doświadczenie zajmie jego miejsce, przepadnie, chyba że najpierw zapiszesz jego plik.',
  messageWith: (why) =>
    `To, co wpisano, jest tylko w tej karcie: ${why} Gdy inne doświadczenie zajmie jego miejsce, przepadnie, chyba że najpierw zapiszesz jego plik.`,
  no: 'Zostań przy nim',
  saveFirst: 'Zapisz plik, potem dalej',
  yes: 'Dalej bez zapisania',
};
