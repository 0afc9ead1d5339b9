import type { FirstWords } from '../../catalogue.ts';

export const practice: FirstWords['practice'] = {
  heading: 'Colonne d’entraînement',
  strike: 'Frapper le diapason',
  forkAtMouth: 'Diapason à l’embouchure',
  damp: 'Étouffer',
  shorter: 'Un millimètre plus courte',
  longer: 'Un millimètre plus longue',
  shorterFine: 'Un cinquième de millimètre plus courte',
  longerFine: 'Un cinquième de millimètre plus longue',
  rule: 'Loupe : la règle au niveau du piston',
  room: 'Salle',
  rooms: { quiet: 'calme', talk: 'quelques voix', 'full class': 'classe entière' },
  instruments: (celsius, humidityPercent, diameterMm) =>
    `Instruments\u00a0: ${celsius}\u00a0°C, humidité ${humidityPercent}\u00a0%, diamètre intérieur du tube ${diameterMm}\u00a0mm`,
  instrumentsApart: (celsius, humidityPercent, diameterMm, place) =>
    `Instruments\u00a0: ${celsius}\u00a0°C, humidité ${humidityPercent}\u00a0%, diamètre intérieur du tube ${diameterMm}\u00a0mm. Le lieu choisi est une autre salle\u00a0: ces valeurs sont donc notées dans un lieu à part, «\u00a0${place}\u00a0»`,
  note: 'Noter ces valeurs',
  noted: 'Les valeurs sont notées sous Montage.',
  notedApart: (place) =>
    `Les valeurs sont notées sous Montage, dans un lieu à part\u00a0: «\u00a0${place}\u00a0». Ce que vous mesurez maintenant appartient à ce lieu.`,
  otherTube: (diameterMm, practiceDiameterMm) =>
    `Le tube d’entraînement a un diamètre de ${practiceDiameterMm}\u00a0mm, celui de cette expérience de ${diameterMm}\u00a0mm. Pour vous entraîner, commencez une nouvelle expérience sous Dossiers.`,
};

export const guide: FirstWords['guide'] = {
  heading: 'Guide',
  count: (done, all) => `Guide, ${done} sur ${all}\u00a0:`,
  says: {
    listen: 'Appuyez sur «\u00a0Écouter\u00a0» et attendez un instant.',
    strike: 'Frappez le diapason et tenez-le à l’embouchure.',
    slide: 'Tirez lentement la poignée jusqu’au bout : chaque éclair est un repère.',
    slideAgain: 'Trop peu de résonances trouvées\u00a0: frappez encore et passez plus lentement.',
    back: 'Revenez comme le montre l’image, jusqu’à « Ici ».',
    type: 'Lisez la longueur dans la loupe et tapez-la au-dessus du tube.',
    rest: 'Revenez de même au repère suivant ; lisez et tapez sa longueur.',
    read: 'Appuyez sur « Noter ces valeurs », près des boutons du diapason.',
    faintSliding: 'Le diapason est faible : frappez-le encore et continuez à faire glisser.',
    faint: 'Le diapason est faible : frappez-le encore. Le chemin du retour reste affiché.',
  },
  done: 'Terminé : la vitesse est en haut. D’autres repères la rendraient plus sûre.',
  showTruth: 'Montrer les valeurs vraies',
  hideTruth: 'Cacher les valeurs vraies',
};
