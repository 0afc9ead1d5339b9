import type { LaterWords } from '../catalogue.ts';

export const namelessGroup: LaterWords['namelessGroup'] = 'Grupo sin nombre';
