import type { FirstWords } from '../catalogue.ts';
import { counted, plural } from './grammar.ts';

export const notice: FirstWords['notice'] = {
  undone: (step) => `Annulé\u00a0: ${step}.`,
  redone: (step) => `Rétabli\u00a0: ${step}.`,
  markDeleted: 'Repère supprimé. Vous pouvez le récupérer sous la liste.',
  resonanceFound: (waiting) =>
    waiting === 1
      ? 'Résonance trouvée : tapez sa longueur.'
      : `Résonance trouvée\u00a0: ${waiting} longueurs à taper.`,
  resonanceMaybe: (percent) =>
    `Peut-être une résonance, sûre à ${percent}\u00a0%. Passez-y encore une fois, ou appuyez sur K pour la garder si vous l’avez entendue aussi.`,
  resonanceAgain: (mark) => `Encore la même résonance\u00a0: comptée avec le repère ${mark}.`,
  resonanceJoined: (mark) =>
    `Résonance trouvée\u00a0: réunie au repère ${mark}. Si c’est une autre résonance, choisissez «\u00a0Séparer\u00a0» dans la liste des repères.`,
  notMarked:
    'Une résonance a été entendue mais n’a pas reçu de repère : le son s’y est interrompu. Vous pouvez encore l’ajouter, sous « Peut-on se fier au niveau ? ».',
  gainCheckPassed:
    'Contrôle du gain : inchangé. Le diapason s’est éteint régulièrement pendant que vous parliez. Enregistré avec l’expérience.',
  gainCheckFailed:
    'Contrôle du gain : modifié. Quelque chose change le niveau. Tant que cela dure, les nouveaux repères sont douteux.',
  noneInRecording: 'Aucune résonance n’a été trouvée dans cet enregistrement.',
  foundInRecording: (resonances) =>
    `${counted(resonances, 'résonance trouvée', 'résonances trouvées')} dans l’enregistrement.`,
  foundToType: (resonances) =>
    `${counted(resonances, 'résonance trouvée', 'résonances trouvées')} dans l’enregistrement. Tapez ${plural(resonances, 'sa longueur', 'leurs longueurs')}.`,
  maybesInRecording: (resonances, maybes) =>
    `${counted(resonances, 'résonance trouvée', 'résonances trouvées')} dans l’enregistrement, et ${counted(maybes, 'autre possible', 'autres possibles')}.`,
  maybesToType: (resonances, maybes) =>
    `${counted(resonances, 'résonance trouvée', 'résonances trouvées')} dans l’enregistrement, et ${counted(maybes, 'autre possible', 'autres possibles')}. Tapez les longueurs.`,
  onlyMaybes: (maybes) =>
    `Rien dans l’enregistrement n’est sûrement une résonance, mais ${counted(maybes, 'endroit en est peut-être une', 'endroits en sont peut-être')}.`,
  recordingHeardAgain: 'L’enregistrement est analysé de nouveau, depuis son début, pour ce diapason.',
  strikeVoid: 'Cette frappe a été interrompue et ne compte pas : frappez encore le diapason.',
  openElsewhere:
    'Cette expérience est ouverte dans un autre onglet. Continuez ici ou ouvrez une copie : les boutons sont en haut de la page.',
  busyElsewhere: 'Cette expérience est ouverte dans un autre onglet : fermez-la d’abord là-bas.',
  takenElsewhere:
    'Vous travaillez maintenant sur cette expérience dans un autre onglet. Celui-ci ne fait que la montrer.',
  storeErased:
    'Tout ce qui était enregistré dans ce navigateur a été effacé. L’expérience ouverte est enregistrée de nouveau. Les autres expériences et les sons enregistrés ne sont plus sur cet appareil.',
  lastUnreadable: (why) =>
    `La dernière expérience n’a pas pu être lue\u00a0: ${why} Elle est enregistrée telle quelle, sous Dossiers.`,
  changesNotSaved: (title, why) =>
    `Les derniers changements de «\u00a0${title}\u00a0» n’ont pas été enregistrés\u00a0: ${why}`,
  notOpened: (why) => `Cette expérience ne peut pas être ouverte\u00a0: ${why}`,
  notDuplicated: (why) => `Cette expérience ne peut pas être copiée\u00a0: ${why}`,
  copyOpen: (title) =>
    `Vous travaillez maintenant sur «\u00a0${title}\u00a0». L’original reste dans la liste.`,
  lessonOpen:
    'La séance est prête. Votre expérience précédente est enregistrée dans la liste, sous Dossiers.',
  lessonAgain:
    'Vous aviez déjà commencé cette séance ici : elle est ouverte comme vous l’avez laissée. Pour un autre groupe, choisissez « Nouvelle, même montage » sous Dossiers.',
  lessonWithout: (forks, lowestHz, highestHz) =>
    `La séance est prête, mais sans ces diapasons\u00a0: ${forks}. Cette page entend les diapasons de ${lowestHz} à ${highestHz}\u00a0Hz.`,
  lessonRevealed: (experiments) =>
    `${counted(experiments, 'expérience', 'expériences')} de cette séance ${plural(experiments, 'montre', 'montrent')} tout maintenant.`,
  noSuchCode:
    'Ce code n’ouvre aucune séance sur cet appareil. Tapez-le exactement comme votre professeur l’a donné.',
  experimentDeleted: 'Expérience supprimée. Vous pouvez la récupérer sous la liste.',
  soundNowhere:
    'Le son ne peut pas être enregistré : ce navigateur n’enregistre rien pour cette page en ce moment.',
  soundLimit:
    'Il n’y a plus de place pour le son : il n’est plus enregistré. Enregistrez des sons en fichiers et effacez-les ici (Dossiers).',
  soundStopped: (why) => `Le son n’est plus enregistré. ${why}`,
};
