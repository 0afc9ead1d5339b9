import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const recordingFault: FirstWords['recordingFault'] = {
  convert: 'Speichere sie noch einmal als gewöhnliche WAV (PCM, 16 Bit).',
  said: {
    'no-wav': { what: 'Diese Datei ist keine WAV-Aufnahme.', advice: 'Wähle eine Tondatei.' },
    'header-cut-off': {
      what: 'Die WAV-Datei ist mitten im Kopf abgeschnitten.',
      advice: 'Kopiere die Datei noch einmal.',
    },
    'not-decoded': {
      what: 'Der Browser findet in dieser Datei keinen Ton, den er abspielen kann.',
      advice:
        'Wähle eine Aufnahme (WAV, MP3, M4A, OGG oder WebM); eine Tabelle mit Längen öffnest du unter Ablage.',
    },
    shorter: { what: 'Die Datei wurde beim Lesen kürzer.', advice: 'Öffne sie noch einmal.' },
    unreadable: {
      what: 'Die Datei ist nicht mehr lesbar: Sie wurde verschoben oder geändert.',
      advice: 'Wähle sie noch einmal.',
    },
    'no-bytes': { what: 'Die Datei ist leer (0 Byte).', advice: 'Wähle eine andere Aufnahme.' },
    'cut-off': {
      what: 'Die WAV-Datei endet, bevor ihr Ton beginnt: Sie wurde abgeschnitten oder nie fertig.',
      advice: 'Kopiere die Datei noch einmal oder wähle eine andere.',
    },
    'no-frames': {
      what: 'Die WAV-Datei enthält keinen Ton.',
      advice: 'Nimm noch einmal auf oder wähle eine andere Datei.',
    },
    'no-sound': {
      what: 'Die Datei enthält keinen Ton.',
      advice: 'Nimm noch einmal auf oder wähle eine andere Datei.',
    },
  },
  bigEndian: 'Diese WAV-Datei hat ihre Bytes in der Reihenfolge Big-Endian.',
  noCoding: 'Diese WAV-Datei sagt nicht, wie ihr Ton codiert ist.',
  coding: (name) => `Diese WAV-Datei ist als ${name} codiert, was hier nicht lesbar ist.`,
  codingNumber: (number) => `Diese WAV-Datei ist als Nummer ${number} codiert, was hier nicht lesbar ist.`,
  channels: (channels, most) =>
    `Diese WAV-Datei gibt ${counted(channels, 'Kanal', 'Kanäle')} an (1 bis ${most} sind möglich).`,
  sampleRate: (sampleRateHz, lowestHz, highestHz) =>
    `Diese WAV-Datei gibt eine Abtastrate von ${sampleRateHz}\u00a0Hz an (${lowestHz} bis ${highestHz} sind möglich).`,
  bits: (bits, bytesPerFrame, channels) =>
    `Diese WAV-Datei gibt ${bits} Bit je Abtastwert in ${bytesPerFrame} Byte je Frame mit ${counted(channels, 'Kanal', 'Kanälen')} an, was nicht lesbar ist.`,
  duration: {
    what: (hours, mostHours) => `Diese Aufnahme dauert ${hours} Stunden; möglich sind bis zu ${mostHours}.`,
    advice: 'Schneide sie.',
  },
  size: {
    what: (megabytes, mostMegabytes) =>
      `Diese komprimierte Aufnahme hat ${megabytes}\u00a0MB, mehr als die ${mostMegabytes}\u00a0MB, die ein Browser auf einmal halten kann.`,
    advice: 'Speichere sie als WAV, die beliebig lang sein darf, oder schneide sie.',
  },
};
