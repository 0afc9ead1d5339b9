import type { LaterWords } from '../../catalogue.ts';

export const keys: LaterWords['keys'] = {
  heading: 'Touches',
  keys: [
    ['L', 'écouter, ou arrêter'],
    ['M', 'faire un repère, dont vous taperez la longueur plus tard'],
    ['K', 'garder ce qui est peut-être une résonance, la plus récente d’abord'],
    ['E', 'aller au dernier repère sans longueur ; s’il n’y en a pas, au champ qui ajoute un repère'],
    ['Entrée', 'valider la longueur tapée et passer au repère suivant'],
    ['Échap', 'quitter un champ, pour que ces touches marchent de nouveau'],
    ['S', 'entraînement : frapper le diapason'],
    ['F', 'entraînement : mettre le diapason à l’embouchure, ou l’éloigner'],
    ['← →', 'changer la longueur de 1\u00a0mm ; maintenir la touche pour continuer à glisser'],
    ['Maj ← →', 'changer la longueur de 0,2\u00a0mm'],
    ['Ctrl Z', 'annuler'],
    ['Ctrl Y', 'rétablir'],
    ['?', 'montrer ces touches'],
  ],
  close: 'Fermer',
};
