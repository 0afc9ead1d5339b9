import type { FirstWords } from '../catalogue.ts';

export const linkFault: FirstWords['linkFault'] = {
  damaged: 'Ce lien est abîmé. Redemandez-le et copiez-le en entier.',
  newer:
    'Ce lien vient d’une version plus récente de cette page. Rechargez la page quand vous êtes en ligne, puis ouvrez encore le lien.',
  noInflate:
    'Ce navigateur est trop ancien pour lire le lien. Utilisez Firefox 113, Safari 16.4, Chrome 80 ou plus récent.',
  record: (why) =>
    `Ce lien de séance est inutilisable : ${why} Demandez à votre professeur d’en faire un nouveau.`,
};
