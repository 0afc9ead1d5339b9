import type { FirstWords } from '../../catalogue.ts';

export const keepingBar: FirstWords['keepingBar'] = {
  elsewhere:
    'Cette expérience est ouverte dans un autre onglet. Celui-ci ne fait que la montrer, et suit l’autre.',
  workHere: 'Continuer ici',
  openCopy: 'Ouvrir une copie',
  apart:
    'Cette expérience a été modifiée dans un autre onglet. Ce que vous changez ici ne sera pas enregistré.',
  goOn: 'Continuer avec une copie',
  useOther: 'Prendre la version de l’autre onglet',
  refused: (why) =>
    `Votre travail n’est que dans cet onglet\u00a0: ${why} Vous pouvez continuer. Enregistrez le fichier avant de partir.`,
  save: 'Enregistrer le fichier',
  tryAgain: 'Réessayer',
  sound: (used, limit) => ({
    before: '',
    part: '● Le son est enregistré',
    after: ` pendant l’écoute\u00a0: ${used} sur ${limit}`,
  }),
  stopSaving: 'Ne plus enregistrer le son',
  newer:
    'Une version plus récente de cette page est prête. Mettez à jour quand vous voulez ; vos mesures sont enregistrées.',
  newerBusy:
    'Une version plus récente de cette page est prête. Fermez d’abord ses autres onglets : ils utilisent encore l’ancienne.',
  useNewer: 'Mettre à jour',
};
