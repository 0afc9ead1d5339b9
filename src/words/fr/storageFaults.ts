import type { FirstWords } from '../catalogue.ts';

export const storageFault: FirstWords['storageFault'] = {
  elsewhere: 'Un autre onglet a enregistré cette expérience entre-temps.',
  full: 'L’espace que ce navigateur donne à la page est plein. Effacez des sons enregistrés (sous Dossiers) ou libérez de la place, puis réessayez.',
  closed: 'Le navigateur a fermé l’espace de stockage de cette page. Réessayez.',
  gone: {
    'another tab': 'Un autre onglet a fermé ou effacé ce que cette page avait enregistré.',
    'the browser': 'Le navigateur a fermé ou effacé ce que cette page avait enregistré.',
    'this tab': 'Cet onglet a fermé ou effacé ce que cette page avait enregistré.',
  },
  refused:
    'Ce navigateur ne laisse rien enregistrer à la page\u00a0: une fenêtre privée ou un réglage l’interdit.',
  newer: 'Une version plus récente de cette page a enregistré ici. Fermez tous ses onglets et rouvrez-la.',
  page: 'La page elle-même a échoué pendant l’enregistrement.',
  unknown: (said) => `L’espace de stockage du navigateur ne répond plus correctement (${said}).`,
};
