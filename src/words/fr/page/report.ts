import type { LaterWords } from '../../catalogue.ts';

export const reportPage: LaterWords['reportPage'] = {
  name: 'Compte rendu',
  print: 'Imprimer ou enregistrer en PDF',
  save: 'Enregistrer en fichier HTML',
  leaveWorking: 'Sans les calculs, avec de la place pour calculer',
  back: 'Retour aux Dossiers',
  lines: 'Il y a des lignes vides pour les noms et la discussion.',
  pending: 'Compte rendu :',
};
