import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const recordingFault: FirstWords['recordingFault'] = {
  convert: 'Zapisz go jeszcze raz jako zwykły WAV (PCM, 16 bitów).',
  said: {
    'no-wav': { what: 'Ten plik nie jest nagraniem WAV.', advice: 'Wybierz plik dźwiękowy.' },
    'header-cut-off': {
      what: 'Plik WAV jest ucięty w nagłówku.',
      advice: 'Skopiuj plik jeszcze raz.',
    },
    'not-decoded': {
      what: 'Przeglądarka nie znajduje w tym pliku dźwięku, który umie odtworzyć.',
      advice:
        'Wybierz nagranie (WAV, MP3, M4A, OGG lub WebM); tabelę długości otwiera się w widoku Archiwum.',
    },
    shorter: {
      what: 'Plik stał się krótszy w czasie czytania.',
      advice: 'Otwórz go jeszcze raz.',
    },
    unreadable: {
      what: 'Pliku nie da się już odczytać: został przeniesiony albo zmieniony.',
      advice: 'Wybierz go jeszcze raz.',
    },
    'no-bytes': { what: 'Plik jest pusty (0 bajtów).', advice: 'Wybierz inne nagranie.' },
    'cut-off': {
      what: 'Plik WAV kończy się, zanim zacznie się dźwięk: został ucięty albo nigdy nie był skończony.',
      advice: 'Skopiuj plik jeszcze raz albo wybierz inny.',
    },
    'no-frames': {
      what: 'Plik WAV nie zawiera dźwięku.',
      advice: 'Nagraj jeszcze raz albo wybierz inny plik.',
    },
    'no-sound': {
      what: 'Plik nie zawiera dźwięku.',
      advice: 'Nagraj jeszcze raz albo wybierz inny plik.',
    },
  },
  bigEndian: 'Ten plik WAV ma bajty w kolejności big-endian.',
  noCoding: 'Ten plik WAV nie podaje, jak zakodowano dźwięk.',
  coding: (name) => `Ten plik WAV ma kodowanie ${name}, którego nie da się tu odczytać.`,
  codingNumber: (number) => `Ten plik WAV ma kodowanie o numerze ${number}, którego nie da się tu odczytać.`,
  channels: (channels, most) =>
    `Ten plik WAV podaje ${counted(channels, 'kanał', 'kanały', 'kanałów')} (możliwe od 1 do ${most}).`,
  sampleRate: (sampleRateHz, lowestHz, highestHz) =>
    `Ten plik WAV podaje częstotliwość próbkowania ${sampleRateHz}\u00a0Hz (możliwe od ${lowestHz} do ${highestHz}).`,
  bits: (bits, bytesPerFrame, channels) =>
    `Ten plik WAV podaje ${counted(bits, 'bit', 'bity', 'bitów')} na próbkę i ${counted(bytesPerFrame, 'bajt', 'bajty', 'bajtów')} na ramkę, ${counted(channels, 'kanał', 'kanały', 'kanałów')}; tego nie da się odczytać.`,
  duration: {
    what: (hours, mostHours) =>
      `To nagranie trwa za długo: ${hours}\u00a0h; możliwe jest najwyżej ${mostHours}\u00a0h.`,
    advice: 'Przytnij je.',
  },
  size: {
    what: (megabytes, mostMegabytes) =>
      `To skompresowane nagranie ma ${megabytes}\u00a0MB, więcej niż ${mostMegabytes}\u00a0MB, które przeglądarka może pomieścić naraz.`,
    advice: 'Zapisz je jako WAV, który może mieć dowolną długość, albo je przytnij.',
  },
};
