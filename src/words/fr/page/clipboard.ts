import type { LaterWords } from '../../catalogue.ts';

export const clipboard: LaterWords['clipboard'] = {
  notCopied: 'Le navigateur n’a pas permis de copier. Enregistrez plutôt le fichier CSV.',
};
