import type { LaterWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const classPage: LaterWords['classPage'] = {
  heading: 'Classe',
  lead: 'Déposez ici les fichiers des groupes (JSON ou CSV, autant que vous voulez) ou collez un tableau\u00a0: soit des repères, avec une colonne group, soit des résultats, avec les colonnes group, speed_mps et standard_uncertainty_mps. Ou lisez les codes sur les écrans des groupes. Tout reste sur cet appareil jusqu’à ce que vous vidiez la vue Classe. Rien n’est envoyé.',
  back: 'Retour aux Dossiers',
  print: 'Imprimer la vue d’ensemble',
  saveCsv: 'Enregistrer la classe en CSV',
  saveJson: 'Enregistrer la classe en JSON',
  copy: 'Copier le tableau',
  copied: 'Le tableau de la classe est copié, prêt à coller.',
  empty: 'Vider la vue Classe',
  discuss: 'À discuter',
  groups: 'Groupes',
  table: 'Tableau des groupes',
  use: 'Compter',
  group: 'Groupe',
  speed: 'm/s (95\u00a0%)',
  marks: 'Repères',
  remarks: 'Remarques',
  groupInFile: (name, fileName) => `${name}, ${fileName}`,
  count: (group) => `Compter ${group}`,
};

export const codeTaken: LaterWords['codeTaken'] = {
  notACode: 'Ce code ne contient pas le résultat d’un groupe.',
  part: (have, of) =>
    `${counted(have, 'code lu', 'codes lus')} sur ${of} pour ce groupe. Montrez le suivant.`,
  new: (group) => `Ajouté\u00a0: «\u00a0${group}\u00a0».`,
  there: (group) => `Déjà là, inchangé\u00a0: «\u00a0${group}\u00a0».`,
  newer: (group) =>
    `Déjà là\u00a0: «\u00a0${group}\u00a0». Cette version est plus récente et compte à sa place.`,
  older: (group) =>
    `Déjà là\u00a0: «\u00a0${group}\u00a0». Cette version n’est pas plus récente et ne compte pas.`,
  inTable: (rows) => `Le tableau des groupes a ${counted(rows, 'ligne', 'lignes')}.`,
};

export const camera: LaterWords['camera'] = {
  start: 'Lire les codes avec la caméra',
  stop: 'Arrêter la caméra',
  lead: 'Tenez le code d’un groupe devant la caméra. Les images ne sont pas enregistrées.',
  none: 'Ce navigateur ne donne pas de caméra à la page. Lisez le code avec un téléphone ou une tablette, ou ouvrez ici le lien du groupe.',
  refused:
    'Cette page n’a pas le droit d’utiliser la caméra. Autorisez-la à côté de l’adresse, ou ouvrez ici le lien du groupe.',
  busy: 'La caméra ne démarre pas. Un autre programme l’utilise peut-être.',
  picture: 'Ce que voit la caméra',
};
