import type { FirstWords } from '../../catalogue.ts';

export const capture: FirstWords['capture'] = {
  ended: 'Słuchanie zakończone',
  notListening: 'Strona nie słucha.',
  held: 'Słuchanie wstrzymane',
  paused: 'Wstrzymane.',
  again: 'Zacznij od nowa',
  ownTab: 'Otwórz w osobnej karcie',
  help: 'Pomoc dotycząca mikrofonu',
};

export const processingFlag: FirstWords['processingFlag'] = {
  on: 'włączone',
  off: 'wyłączone',
  unknown: 'nie wiadomo',
};

export const trustPart: FirstWords['trustPart'] = {
  name: 'Czy poziomowi można ufać?',
  doubtful: 'Poziom jest wątpliwy.',
  unproven: 'Jeszcze nie sprawdzono.',
  withheld: (flags) =>
    `Usłyszane, ale bez znacznika: ${flags}. Dźwięk urwał się w czasie przejścia, jak wtedy, gdy tłumienie szumu wycina ton: może to nie był rezonans.`,
  flag: (seconds, riseDb) => `w ${seconds}\u00a0s, wzrost ${riseDb}\u00a0dB`,
  maybes:
    'Może to rezonans. Przejdź przez niego jeszcze raz: jeśli znów go słychać, stanie się znacznikiem. Albo zachowaj go, jeśli też go słyszysz.',
  maybe: (seconds, percent, reason) => `○ w ${seconds}\u00a0s, pewność ${percent}\u00a0%: ${reason}`,
  keep: 'Zachowaj',
  keepNamed: (seconds) => `Zachowaj rezonans w ${seconds}\u00a0s`,
  letIn: 'Dodaj mimo to',
  letInNamed: (flag) => `Dodaj znacznik rezonansu ${flag}`,
  letAllIn: 'Dodaj wszystkie',
  toCheck: 'Do testu wzmocnienia',
};
