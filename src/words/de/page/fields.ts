import type { FirstWords } from '../../catalogue.ts';

export const field: FirstWords['field'] = {
  length: 'Länge',
  centimetres: 'cm',
  changeSign: 'Über oder unter null',
  dash: 'Strich, dann eine zweite Länge',
  take: 'Trotzdem benutzen',
  stillWaits: 'Das hast du früher eingetippt; benutzt wird es noch nicht. Drück Enter, um es zu benutzen.',
  forget: 'Verwerfen',
  tooLong: (characters, most) =>
    `Nicht eingefügt: Das Feld hätte ${characters} Zeichen, höchstens ${most} sind möglich. Füge einen kürzeren Text ein.`,
  workingOut: 'wird berechnet…',
};
