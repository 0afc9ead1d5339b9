import type { FirstWords } from '../catalogue.ts';

export const stepLabels: FirstWords['stepLabels'] = {
  autoGainControl: 'Automatyczne wzmocnienie',
  noiseSuppression: 'Tłumienie szumu',
  echoCancellation: 'Usuwanie echa',
};

export const stepNames: FirstWords['stepNames'] = {
  autoGainControl: 'automatyczne wzmocnienie',
  noiseSuppression: 'tłumienie szumu',
  echoCancellation: 'usuwanie echa',
};

export const captureTrust: FirstWords['captureTrust'] = {
  nothingProcesses: 'Nic nie przetwarza dźwięku tego źródła.',
  processingOn: {
    marks: (steps) =>
      `Ta przeglądarka ma włączone ${steps}, a to może zmieniać poziom. Rezonanse i tak dostają znaczniki, każdy z tą wątpliwością: ich długości są dobre, ich wzrost w dB może być błędny. Wybierz inny mikrofon albo inną przeglądarkę, wyłącz tryby mowy w ustawieniach dźwięku systemu albo nagraj dźwięk dowolnym dyktafonem i otwórz plik tutaj.`,
    sweep: (steps) =>
      `Ta przeglądarka ma włączone ${steps}, a to może zmieniać poziom. Maksima poniżej mogą być przesunięte albo może ich brakować. Wybierz inny mikrofon albo inną przeglądarkę albo wyłącz tryby mowy w ustawieniach dźwięku systemu.`,
  },
  checkFailed: {
    marks:
      'Test wzmocnienia wykazał, że coś zmienia poziom. Rezonanse i tak dostają znaczniki, każdy z tą wątpliwością: ich długości są dobre, ich wzrost w dB może być błędny. Wyłącz tryby mowy w ustawieniach dźwięku systemu albo wybierz inny mikrofon, a potem powtórz test.',
    sweep:
      'Test wzmocnienia wykazał, że coś zmienia poziom. Maksima poniżej mogą być przesunięte albo może ich brakować. Wyłącz tryby mowy w ustawieniach dźwięku systemu albo wybierz inny mikrofon, a potem powtórz test.',
  },
  checkPassed: 'Test wzmocnienia z tym mikrofonem wypadł dobrze.',
  soundsProcessed: {
    marks:
      'Dźwięk wygląda na przetworzony, choć przeglądarka temu przeczy. Rezonanse i tak dostają znaczniki, każdy z tą wątpliwością: ich długości są dobre, ich wzrost w dB może być błędny. Zrób test wzmocnienia: jeśli wypadnie dobrze, nowe znaczniki nie będą miały tej wątpliwości.',
    sweep:
      'Dźwięk wygląda na przetworzony, choć przeglądarka temu przeczy. Maksima poniżej mogą być przesunięte albo może ich brakować. Zrób test wzmocnienia: jeśli wypadnie dobrze, powtórz przemiatanie.',
  },
  processingOff: 'Przeglądarka nie przetwarza dźwięku.',
  processingUnsaid: (steps) =>
    `Ta przeglądarka nie podaje, czy wyłączyła ${steps}. Zrób test wzmocnienia, zanim zaufasz poziomowi.`,
};

export const markDoubt: FirstWords['markDoubt'] = {
  inDoubt: (reasons) => `Wątpliwe: ${reasons}`,
  reasons: {
    'processing-on': 'przeglądarka przetwarzała dźwięk, więc wzrost w dB może być błędny',
    'gain-check-failed': 'test wzmocnienia wypadł źle, więc wzrost w dB może być błędny',
    'sounds-processed': 'dźwięk wyglądał na przetworzony, więc wzrost w dB może być błędny',
    suppressed: 'dźwięk się w nim urwał, więc może to nie rezonans',
  },
};
