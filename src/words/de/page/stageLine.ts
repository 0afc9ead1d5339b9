import type { FirstWords } from '../../catalogue.ts';

export const stageLine: FirstWords['stageLine'] = {
  waiting: 'Warten auf den Ton…',
  tooFast: 'Zu schnell: Eine Resonanz ging vorbei.',
  roomNoise: 'Das Raumgeräusch wird gemessen: Seid still.',
  listenFirst: 'Drück „Zuhören“. Dann sind beide Hände frei für Gabel und Rohr.',
  openRecording: 'Öffne eine Aufnahme der Gabel über der Säule.',
  over: 'Die Aufnahme ist zu Ende.',
  overTypeLengths: 'Die Aufnahme ist zu Ende. Tipp die Längen der Marken ein.',
  strike: 'Es wird zugehört. Schlag die Gabel an und halte sie an die Mündung.',
  slide: 'Die Gabel ist zu hören: Schieb langsam.',
  perhaps: 'Vielleicht eine Resonanz: Schieb noch einmal vorbei.',
  marked: 'Resonanz markiert. Geh zum Ablesen zurück, oder schieb weiter.',
};
