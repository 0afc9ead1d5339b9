import type { FirstWords } from '../../catalogue.ts';

export const groupName: FirstWords['groupName'] = {
  ask: 'Nom de votre groupe',
  take: 'Utiliser',
  later: 'Plus tard',
  taken: (group) =>
    `Vos fichiers, votre compte rendu et la classe vous appellent maintenant «\u00a0${group}\u00a0». Vous pouvez changer ce nom sous Dossiers.`,
};
