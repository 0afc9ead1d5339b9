import type { FirstWords } from '../../catalogue.ts';
import { counted, plural } from '../grammar.ts';

export const frame: FirstWords['frame'] = {
  heading: 'Banc de colonne d’air',
  views: 'Vues',
  viewNames: {
    measure: 'Mesurer',
    apparatus: 'Montage',
    check: 'Vérifier',
    working: 'Calculs',
    compare: 'Comparer',
    records: 'Dossiers',
  },
  keys: 'Touches',
  language: 'Langue',
  languageNotLoaded:
    'Cette langue n’a pas pu être chargée : la page garde l’actuelle. Réessayez quand vous serez en ligne.',
  theme: 'Thème',
  themeNames: { system: 'auto', light: 'clair', dark: 'sombre' },
  drop: 'Déposez pour ouvrir',
  groupsTaken: (count) => `${counted(count, 'groupe ajouté', 'groupes ajoutés')} à la vue Classe.`,
  close: 'Fermer',
  doubts: (count) => counted(count, 'avertissement', 'avertissements'),
  lengthsToType: (count) => `Taper ${plural(count, 'une longueur', `${count} longueurs`)}`,
  saved: {
    nothing: '',
    saved: 'Enregistré',
    saving: 'Enregistrement…',
    refused: 'Pas enregistré sur cet appareil',
  },
};

export const failed: FirstWords['failed'] = {
  heading: (part) =>
    part === null
      ? 'Cette partie de la page ne fonctionne plus.'
      : `Cette partie de la page ne fonctionne plus\u00a0: ${part}.`,
  detail:
    'Tout le reste marche encore. Réessayez. Si cela s’est produit juste après votre dernière action, annulez-la. Dans tous les cas, vous pouvez enregistrer le fichier de l’expérience.',
  again: 'Réessayer',
  undo: 'Annuler la dernière action',
  save: 'Enregistrer le fichier de l’expérience',
};
