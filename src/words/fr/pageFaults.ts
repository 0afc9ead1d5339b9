import type { FirstWords } from '../catalogue.ts';

export const pageFault: FirstWords['pageFault'] = {
  action:
    'Quelque chose a échoué sur la page\u00a0: ce que vous venez de faire n’a peut-être pas marché. Ce que vous aviez saisi avant est toujours là. Réessayez\u00a0; si cela échoue encore, enregistrez le fichier JSON sous Dossiers et rechargez la page.',
  follow:
    'Une partie de la page ne montre pas le dernier changement, mais il est fait. «\u00a0Annuler\u00a0» revient en arrière\u00a0; recharger la page le montre.',
  hearing: 'L’écoute n’a pas suivi le dernier changement\u00a0: arrêtez-la, puis écoutez de nouveau.',
  view: 'Cette vue n’a pas pu être chargée\u00a0: il n’y a pas de réseau, ou le site a changé. Ce que vous avez saisi est toujours là\u00a0; réessayez, ou rechargez la page.',
};
