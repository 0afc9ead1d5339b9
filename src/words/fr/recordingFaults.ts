import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const recordingFault: FirstWords['recordingFault'] = {
  convert: 'Enregistrez-le de nouveau en WAV ordinaire (PCM, 16 bits).',
  said: {
    'no-wav': {
      what: 'Ce fichier n’est pas un enregistrement WAV.',
      advice: 'Choisissez un fichier son.',
    },
    'header-cut-off': {
      what: 'Le fichier WAV est coupé dans son en-tête.',
      advice: 'Copiez de nouveau le fichier.',
    },
    'not-decoded': {
      what: 'Le navigateur ne trouve dans ce fichier aucun son qu’il sache lire.',
      advice:
        'Choisissez un enregistrement (WAV, MP3, M4A, OGG ou WebM) ; un tableau de longueurs s’ouvre sous Dossiers.',
    },
    shorter: {
      what: 'Le fichier est devenu plus court pendant la lecture.',
      advice: 'Ouvrez-le de nouveau.',
    },
    unreadable: {
      what: 'Le fichier ne peut plus être lu : il a été déplacé ou modifié.',
      advice: 'Choisissez-le de nouveau.',
    },
    'no-bytes': {
      what: 'Le fichier est vide (0 octet).',
      advice: 'Choisissez un autre enregistrement.',
    },
    'cut-off': {
      what: 'Le fichier WAV finit avant le début du son : il a été coupé ou jamais terminé.',
      advice: 'Copiez de nouveau le fichier ou choisissez-en un autre.',
    },
    'no-frames': {
      what: 'Le fichier WAV ne contient aucun son.',
      advice: 'Refaites l’enregistrement ou choisissez un autre fichier.',
    },
    'no-sound': {
      what: 'Le fichier ne contient aucun son.',
      advice: 'Refaites l’enregistrement ou choisissez un autre fichier.',
    },
  },
  bigEndian: 'Ce fichier WAV a ses octets dans l’ordre gros-boutiste (big-endian).',
  noCoding: 'Ce fichier WAV ne dit pas comment son son est codé.',
  coding: (name) => `Ce fichier WAV est codé en ${name}, qui ne peut pas être lu ici.`,
  codingNumber: (number) => `Ce fichier WAV est codé avec le numéro ${number}, qui ne peut pas être lu ici.`,
  channels: (channels, most) =>
    `Ce fichier WAV annonce ${counted(channels, 'canal', 'canaux')} (de 1 à ${most} sont possibles).`,
  sampleRate: (sampleRateHz, lowestHz, highestHz) =>
    `Ce fichier WAV annonce une fréquence d’échantillonnage de ${sampleRateHz}\u00a0Hz (de ${lowestHz} à ${highestHz} sont possibles).`,
  bits: (bits, bytesPerFrame, channels) =>
    `Ce fichier WAV annonce ${counted(bits, 'bit', 'bits')} par échantillon dans ${counted(bytesPerFrame, 'octet', 'octets')} par trame de ${counted(channels, 'canal', 'canaux')}, ce qui ne peut pas être lu.`,
  duration: {
    what: (hours, mostHours) =>
      `Cet enregistrement dure ${hours} heures\u00a0; ${mostHours} au plus sont possibles.`,
    advice: 'Coupez-le.',
  },
  size: {
    what: (megabytes, mostMegabytes) =>
      `Cet enregistrement compressé fait ${megabytes}\u00a0Mo, plus que les ${mostMegabytes}\u00a0Mo qu’un navigateur peut tenir à la fois.`,
    advice: 'Enregistrez-le en WAV, qui peut avoir n’importe quelle durée, ou coupez-le.',
  },
};
