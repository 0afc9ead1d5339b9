import type { LaterWords } from '../../catalogue.ts';

export const lesson: LaterWords['lesson'] = {
  heading: 'Lien de séance',
  lead: 'Pour les enseignants : un lien pour la classe avec les diapasons, le tube, la règle, les lieux et la colonne tels qu’ils sont réglés maintenant. Il ne contient ni repères ni noms.',
  task: 'Ce qu’il faut mesurer',
  language: 'Langue de la consigne (en, de, fr …)',
  hideExpected: 'Cacher les longueurs attendues',
  hideTheory: 'Cacher la vitesse prévue',
  hideTruth: 'Cacher les valeurs vraies de l’entraînement',
  apart:
    'Les deux dernières cases sont indépendantes. Si seule la prévision est cachée, « Montrer les valeurs vraies » donne encore la vitesse du son à qui s’entraîne. Cochez les deux pour la cacher partout.',
  limits:
    'Ce qui ne peut pas être caché : ce que les élèves calculent ou cherchent eux-mêmes, cette page ouverte sans le lien, et le code source du programme. Cacher met la réponse hors de vue ; ce n’est pas un verrou.',
  make: 'Créer le lien',
  link: 'Lien',
  copy: 'Copier le lien',
  code: 'Montrer le code QR',
  codeName: 'la séance',
  tooLongForCode: 'Le lien est trop long pour un code QR. Raccourcissez la consigne ou envoyez le lien.',
  reveal: 'Le moment venu, montrer à la classe ce qui était caché',
  revealCode: 'Code à annoncer ; les élèves le tapent dans Dossiers',
  revealLink: 'Lien qui fait la même chose',
  copyReveal: 'Copier ce lien',
  showRevealCode: 'Montrer ce lien en code QR',
  revealName: 'ce que la séance cache',
  copied: 'Le lien est copié.',
  notCopied: 'Le navigateur n’autorise pas la copie. Sélectionnez le lien et copiez-le à la main.',
};

export const keptBack: LaterWords['keptBack'] = {
  heading: 'Ce que cette séance cache',
  until: (list) => `Caché jusqu’à ce que votre professeur le montre : ${list}.`,
  expected: 'les longueurs attendues',
  theory: 'la vitesse du son prévue',
  truth: 'les valeurs vraies de la colonne d’entraînement',
  code: 'Code du professeur',
  show: 'Montrer',
  noCode: 'Cette séance n’a pas de code qui le montrerait.',
};
