import type { FirstWords } from '../catalogue.ts';

export const waitsFor: FirstWords['waitsFor'] = {
  permission:
    'Le navigateur demande si cette page peut utiliser le micro : regardez près de l’adresse et choisissez « Autoriser ».',
};

export const hold: FirstWords['hold'] = {
  muted:
    'Le micro est coupé, par un interrupteur ou par le système. Rétablissez-le : l’écoute reprend d’elle-même.',
  suspended:
    'Le navigateur a mis le son en pause (un appel, une page cachée, la veille). Revenez à la page ou recommencez.',
  frozen: 'Aucun son ne vient du micro depuis deux secondes. S’il ne revient pas, recommencez.',
};

export const noSound: FirstWords['noSound'] =
  'Aucun son ne vient du micro. Cherchez un interrupteur ou une touche qui le coupe, ou choisissez-en un autre sous Vérifier.';

export const captureFailure: FirstWords['captureFailure'] = {
  withoutMicrophone: (advice) =>
    `${advice} Tout le reste marche sans lui\u00a0: tapez des longueurs à la main, ouvrez un enregistrement ou utilisez la colonne d’entraînement.`,
  'recording-broken': {
    what: 'L’enregistrement n’a pas pu être analysé jusqu’au bout.',
    advice: 'Ouvrez-le encore une fois ; si cela n’aide pas, enregistrez-le en WAV et ouvrez ce fichier.',
  },
  'listening-broken': {
    what: 'La page n’a pas pu commencer l’écoute, ou l’a interrompue.',
    advice: 'Recommencez ; si cela n’aide pas, vérifiez la connexion et rechargez la page.',
  },
  'audio-broken': {
    what: 'L’audio du navigateur a cessé de fonctionner.',
    advice: 'Ce qui a été trouvé avant est gardé. Recommencez ; si cela se reproduit, rechargez la page.',
  },
  'insecure-context': {
    what: 'Le navigateur ne donne le micro qu’aux pages dont l’adresse est sécurisée.',
    advice: 'Ouvrez cette page avec https:// (ou sur localhost).',
  },
  framed: {
    what: 'Cette page est intégrée dans une autre, qui lui refuse le micro.',
    advice: 'Ouvrez-la dans son propre onglet et recommencez.',
  },
  'permission-withdrawn': {
    what: 'L’autorisation du micro a été retirée.',
    advice:
      'Ce qui a été trouvé avant est gardé. Appuyez sur l’icône à côté de l’adresse, autorisez de nouveau le micro et recommencez.',
  },
  'microphone-busy': {
    what: 'Le micro ne peut pas être ouvert : un autre programme ou onglet l’utilise peut-être.',
    advice: 'Fermez-le (un appel, un enregistreur), puis recommencez.',
  },
  'microphone-lost': {
    what: 'Le micro a été débranché ou éteint.',
    advice: 'Ce qui a été trouvé avant est gardé. Branchez-le et recommencez.',
  },
  'uneven-sound': {
    what: 'Le son arrive plus vite ou plus lentement que le navigateur ne l’indique, ou l’ordinateur n’arrive pas à suivre : temps et fréquences seraient faux.',
    advice:
      'Ce qui a été trouvé avant est gardé. Fermez les autres programmes, débranchez et rebranchez le micro, puis recommencez.',
  },
  closed: {
    what: 'La question sur le micro a été fermée sans réponse.',
    advice: 'Recommencez et choisissez « Autoriser ».',
  },
  refused: {
    what: 'Le micro a été refusé.',
    advice:
      'Appuyez sur l’icône à côté de l’adresse, autorisez le micro pour cette page et recommencez. S’il n’y a rien à autoriser, l’administrateur de l’établissement l’a désactivé.',
  },
  system: {
    what: 'Les réglages de confidentialité de l’ordinateur refusent le micro au navigateur.',
    advice: 'Autorisez-le là (confidentialité, micro), puis recommencez.',
  },
  policy: {
    what: 'Une règle de ce site ou de l’établissement refuse le micro aux pages.',
    advice: 'Demandez à l’administrateur de l’autoriser.',
  },
  'none-given': {
    what: 'Ce navigateur ne laisse pas les pages web utiliser un micro.',
    advice: 'Utilisez une version actuelle de Chrome, Edge, Firefox ou Safari.',
  },
  'none-found': {
    what: 'Aucun micro n’a été trouvé.',
    advice: 'Branchez-en un ou allumez-le, puis recommencez.',
  },
  'not-there': {
    what: 'Le micro choisi n’est plus là.',
    advice: 'Choisissez-en un autre et recommencez.',
  },
};
