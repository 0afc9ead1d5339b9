import { fixed } from '../../numbers.ts';
import type { LaterWords } from '../../catalogue.ts';

export const check: LaterWords['check'] = {
  ways: 'Contrôles',
  sound: 'Entrée et diapason',
  gain: 'Gain',
  length: 'Une longueur',
  tone: 'Son joué',
  sweep: 'Balayage',
};

export const checkLength: LaterWords['checkLength'] = {
  heading: 'Vérifier une longueur',
  lead: 'La colonne reste comme elle est. Frappez le diapason, tenez-le tour à tour à l’embouchure et loin d’elle : cette page dit si cette longueur résonne.',
  begin: 'Commencer la vérification',
  again: 'Recommencer',
  end: 'Finir la vérification',
  listenFirst: 'Appuyez d’abord sur «\u00a0Écouter\u00a0».',
};

export const gainCheck: LaterWords['gainCheck'] = {
  name: 'Contrôle du gain',
  heading: 'Quelque chose modifie-t-il le niveau\u00a0?',
  lead: 'Les traitements prévus pour les appels modifient le volume d’eux-mêmes et suppriment ce qui n’est pas de la parole, surtout le son d’un diapason. Dans une salle calme, cela ne se remarque pas.',
  browserSays: 'Ce que dit le navigateur',
  steps: [
    'Fixez la colonne et le micro.',
    'Frappez le diapason une fois, sur du caoutchouc, et posez sa tige près du micro.',
    'Ne bougez plus pendant dix secondes, pendant que quelqu’un parle.',
  ],
  begin: 'Commencer le contrôle du gain',
  again: 'Recommencer',
  end: 'Finir le contrôle du gain',
  listenFirst: 'Choisissez d’abord «\u00a0Micro\u00a0» et appuyez sur «\u00a0Écouter\u00a0».',
  help: 'Aide pour le micro, aussi pour l’administrateur',
  microphone: 'Micro',
  systemsChoice: 'Choix du système',
};

export const soundCheck: LaterWords['soundCheck'] = {
  heading: 'Entrée et diapason',
  lead: 'Appuyez sur «\u00a0Écouter\u00a0», restez silencieux trois secondes, puis frappez le diapason et tenez-le loin du tube.',
  fork: 'Diapason',
  use: 'Utiliser la fréquence mesurée dans l’ajustement',
  used: 'La fréquence mesurée compte maintenant dans l’ajustement.',
  caution:
    'Frappez le diapason sur du caoutchouc ou une semelle de chaussure, jamais sur du verre ou une arête dure.',
  usePractice: {
    heading: 'Utiliser la fréquence du diapason d’entraînement ?',
    message:
      'Ce qui a été entendu est le diapason d’entraînement. Sa fréquence compterait pour le diapason de cette expérience, et aussi pour les repères faits avec un vrai.',
    no: 'Laisser le diapason comme il est',
    yes: 'L’utiliser',
  },
};

export const tone: LaterWords['tone'] = {
  heading: 'Son joué',
  lead: 'À la place d’un diapason : un son sinusoïdal continu, joué par un haut-parleur tenu à l’embouchure de la colonne.',
  pitch: 'Fréquence du son',
  loudness: 'Volume',
  loudnessNow: (percent) => `${percent}\u00a0% de la limite`,
  play: 'Jouer le son',
  stop: 'Arrêter le son',
  mute: 'Un téléphone ou une tablette ne joue rien tant que son mode silencieux est actif : désactivez-le d’abord.',
  cannotPlay:
    'Le son ne peut pas être joué ici. Vérifiez qu’un haut-parleur est branché et qu’aucun autre programme ne l’occupe, puis réessayez ; si cela n’aide pas, rechargez la page.',
  caution:
    'Le son commence doucement et reste sous une limite. Baissez d’abord le volume de l’appareil, et ne le jouez jamais dans un casque que quelqu’un porte.',
};

export const sweepCard: LaterWords['sweepCard'] = {
  heading: 'Balayer une colonne fixe',
  lead: 'La longueur ne change pas\u00a0; la fréquence d’un son joué monte lentement, puis redescend. Là où le son est le plus fort à la montée et à la descente, la colonne résonne.',
  length: 'Longueur de la colonne',
  lengthField: 'Longueur de la colonne balayée',
  from: 'Fréquence de début',
  to: 'Fréquence de fin',
  practice: 'Entraînement : simulé, sans son',
  start: 'Lancer le balayage',
  cancel: 'Annuler le balayage',
  takes: (durationS) => `durée\u00a0: ${fixed(durationS, 0)}\u00a0s`,
  takesUnknown: 'durée\u00a0: —',
  sweeping: 'Balayage en cours',
  soFar:
    'Ce qui a été entendu jusqu’ici. Une résonance se voit comme une bosse, à la montée et à la descente.',
  noLength: 'Tapez d’abord la longueur de la colonne.',
  noResonance:
    'Aucune résonance de cette colonne n’a été entendue à la fois à la montée et à la descente. Rapprochez haut-parleur et micro de l’embouchure, ou élargissez le balayage.',
  order: 'Ordre',
  resonance: 'Résonance',
  speed: 'Vitesse obtenue',
  note: 'Ajouter aux notes',
  noted: 'Le résultat du balayage est maintenant dans les notes, sous Dossiers.',
  doubts: 'Peut-on se fier à ce balayage ?',
  inDoubt: 'Douteux.',
  notProven: 'Pas encore contrôlé.',
  caution:
    'Le haut-parleur va à l’embouchure de la colonne, le micro à côté. Le son commence doucement et reste sous une limite. Baissez d’abord le volume de l’appareil, et ne le jouez jamais dans un casque que quelqu’un porte.',
};
