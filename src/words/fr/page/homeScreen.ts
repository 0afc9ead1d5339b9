import type { LaterWords } from '../../catalogue.ts';

export const homeScreen: LaterWords['homeScreen'] = {
  advice:
    'Sur un iPhone ou un iPad, le navigateur efface ce que cette page a enregistré si vous ne l’ouvrez pas pendant sept jours. Une page ajoutée à l’écran d’accueil n’est pas effacée ainsi, mais ses Dossiers sont vides au début. Ajoutez donc d’abord cette page à l’écran d’accueil (Partager, Sur l’écran d’accueil) et travaillez là. Ce que vous avez déjà mesuré ici, enregistrez-le en fichier.',
  save: 'Enregistrer le fichier',
  read: 'J’ai lu ceci',
};
