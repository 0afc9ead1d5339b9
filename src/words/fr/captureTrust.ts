import type { FirstWords } from '../catalogue.ts';

export const stepLabels: FirstWords['stepLabels'] = {
  autoGainControl: 'Gain automatique',
  noiseSuppression: 'Suppression du bruit',
  echoCancellation: 'Annulation d’écho',
};

export const stepNames: FirstWords['stepNames'] = {
  autoGainControl: 'le gain automatique',
  noiseSuppression: 'la suppression du bruit',
  echoCancellation: 'l’annulation d’écho',
};

export const captureTrust: FirstWords['captureTrust'] = {
  nothingProcesses: 'Rien ne traite le son de cette source.',
  processingOn: {
    marks: (steps) =>
      `Ce navigateur applique quand même ${steps}, ce qui peut changer le niveau. Les résonances reçoivent un repère malgré tout, chacun avec ce doute\u00a0: leurs longueurs sont bonnes, leur hausse en dB peut être fausse. Choisissez un autre micro ou un autre navigateur, désactivez les modes vocaux dans les réglages audio du système, ou enregistrez avec un autre appareil et ouvrez le fichier ici.`,
    sweep: (steps) =>
      `Ce navigateur applique quand même ${steps}, ce qui peut changer le niveau. Les maximums ci-dessous peuvent être déplacés ou manquer. Choisissez un autre micro ou un autre navigateur, ou désactivez les modes vocaux dans les réglages audio du système.`,
  },
  checkFailed: {
    marks:
      'Le contrôle du gain a montré que quelque chose change le niveau. Les résonances reçoivent un repère malgré tout, chacun avec ce doute : leurs longueurs sont bonnes, leur hausse en dB peut être fausse. Désactivez les modes vocaux dans les réglages audio du système ou choisissez un autre micro, puis refaites le contrôle.',
    sweep:
      'Le contrôle du gain a montré que quelque chose change le niveau. Les maximums ci-dessous peuvent être déplacés ou manquer. Désactivez les modes vocaux dans les réglages audio du système ou choisissez un autre micro, puis refaites le contrôle.',
  },
  checkPassed: 'Le contrôle du gain est réussi avec ce micro.',
  soundsProcessed: {
    marks:
      'Le son semble traité, alors que le navigateur dit le contraire. Les résonances reçoivent un repère malgré tout, chacun avec ce doute : leurs longueurs sont bonnes, leur hausse en dB peut être fausse. Faites le contrôle du gain : s’il est réussi, ce doute ne pèsera plus sur les nouveaux repères.',
    sweep:
      'Le son semble traité, alors que le navigateur dit le contraire. Les maximums ci-dessous peuvent être déplacés ou manquer. Faites le contrôle du gain : s’il est réussi, refaites le balayage.',
  },
  processingOff: 'Le navigateur ne traite pas le son.',
  processingUnsaid: (steps) =>
    `Ce navigateur ne dit pas s’il a désactivé ${steps}. Faites le contrôle du gain avant de vous fier à un niveau.`,
};

export const markDoubt: FirstWords['markDoubt'] = {
  inDoubt: (reasons) => `Douteux\u00a0: ${reasons}`,
  reasons: {
    'processing-on': 'le navigateur traitait le son, donc la hausse en dB peut être fausse',
    'gain-check-failed': 'le contrôle du gain avait échoué, donc la hausse en dB peut être fausse',
    'sounds-processed': 'le son semblait traité, donc la hausse en dB peut être fausse',
    suppressed: 'le son s’y est interrompu, ce n’est donc peut-être pas une résonance',
  },
};
