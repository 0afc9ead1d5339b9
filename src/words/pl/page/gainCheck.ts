import type { LaterWords } from '../../catalogue.ts';

export const gainAnswer: LaterWords['gainAnswer'] = {
  verdicts: { rewritten: 'Zmienione', steady: 'Bez zmian', 'cannot-tell': 'Strona słucha' },
  details: {
    rewritten: (departureDb) =>
      `Poziom odbiega o ${departureDb} dB od równego zanikania. Zmienia go coś między mikrofonem a stroną.`,
    steady: (departureDb) => `Kamerton zanikał równo, z dokładnością do ${departureDb} dB, gdy ktoś mówił.`,
  },
  waits: {
    strike: 'Uderz raz w kamerton i trzymaj go nieruchomo, blisko mikrofonu.',
    time: (followedS) => `Nie ruszaj się, a inni niech dalej mówią: słychać było już ${followedS} s.`,
    talk: (talkS) => `Niech teraz ktoś mówi tak głośno jak klasa: słychać było ${talkS} s mowy.`,
    fork: 'Mowa zagłusza kamerton. Uderz w niego jeszcze raz i trzymaj bliżej mikrofonu.',
  },
  kept: {
    steady: (when, departureDb, limitDb, device) =>
      `Zapisane z doświadczeniem: ${when}: bez zmian, ${departureDb} dB od równego zanikania (granica ${limitDb} dB), ${device}.`,
    rewritten: (when, departureDb, limitDb, device) =>
      `Zapisane z doświadczeniem: ${when}: zmienione, ${departureDb} dB od równego zanikania (granica ${limitDb} dB), ${device}.`,
  },
  namelessDevice: 'mikrofon bez nazwy',
  microphone: (number) => `Mikrofon ${number}`,
};
