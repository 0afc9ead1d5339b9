import type { LaterWords } from '../../catalogue.ts';

export const gainAnswer: LaterWords['gainAnswer'] = {
  verdicts: { rewritten: 'Zmienione', steady: 'Bez zmian', 'cannot-tell': 'Strona słucha' },
  details: {
    rewritten: (departureDb) =>
      `Poziom odbiega o ${departureDb}\u00a0dB od równego zanikania. Zmienia go coś między mikrofonem a stroną.`,
    steady: (departureDb) =>
      `Kamerton zanikał równo, z dokładnością do ${departureDb}\u00a0dB, gdy ktoś mówił.`,
  },
  waits: {
    strike: 'Uderz raz w kamerton i trzymaj go nieruchomo, blisko mikrofonu.',
    time: (followedS) => `Nie ruszaj się, a inni niech dalej mówią: słychać było już ${followedS}\u00a0s.`,
    talk: (talkS) => `Niech teraz ktoś mówi tak głośno jak klasa: słychać było ${talkS}\u00a0s mowy.`,
    fork: 'Mowa zagłusza kamerton. Uderz w niego jeszcze raz i trzymaj bliżej mikrofonu.',
  },
  kept: {
    steady: (when, departureDb, limitDb, device) =>
      `Zapisane z doświadczeniem: ${when}: bez zmian, ${departureDb}\u00a0dB od równego zanikania (granica ${limitDb}\u00a0dB), ${device}.`,
    rewritten: (when, departureDb, limitDb, device) =>
      `Zapisane z doświadczeniem: ${when}: zmienione, ${departureDb}\u00a0dB od równego zanikania (granica ${limitDb}\u00a0dB), ${device}.`,
  },
  namelessDevice: 'mikrofon bez nazwy',
  microphone: (number) => `Mikrofon ${number}`,
};
