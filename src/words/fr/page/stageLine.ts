import type { FirstWords } from '../../catalogue.ts';

export const stageLine: FirstWords['stageLine'] = {
  waiting: 'En attente du son…',
  tooFast: 'Trop vite : une résonance est passée.',
  roomNoise: 'Mesure du bruit de la salle : restez silencieux.',
  listenFirst: 'Appuyez sur «\u00a0Écouter\u00a0». Vos deux mains seront libres pour le diapason et le tube.',
  openRecording: 'Ouvrez un enregistrement du diapason au-dessus de la colonne.',
  over: 'L’enregistrement est fini.',
  overTypeLengths: 'L’enregistrement est fini. Tapez les longueurs des repères.',
  strike: 'À l’écoute. Frappez le diapason et tenez-le à l’embouchure.',
  slide: 'Le diapason s’entend : faites glisser lentement.',
  perhaps: 'Peut-être une résonance : passez-y encore une fois.',
  marked: 'Repère placé sur la résonance. Revenez-y pour lire, ou continuez à faire glisser.',
};
