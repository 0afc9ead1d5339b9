import type { LaterWords } from '../../catalogue.ts';

export const gainAnswer: LaterWords['gainAnswer'] = {
  verdicts: { rewritten: 'Verändert', steady: 'Unverändert', 'cannot-tell': 'Hört zu' },
  details: {
    rewritten: (departureDb) =>
      `Der Pegel weicht um ${departureDb}\u00a0dB von einem gleichmäßigen Abklingen ab. Etwas zwischen Mikrofon und Seite verändert ihn.`,
    steady: (departureDb) =>
      `Die Gabel klang gleichmäßig ab, bis auf ${departureDb}\u00a0dB, während jemand sprach.`,
  },
  waits: {
    strike: 'Schlag die Gabel einmal an und halte sie still, nahe am Mikrofon.',
    time: (followedS) => `Halte still und sprecht weiter: ${followedS}\u00a0s gehört.`,
    talk: (talkS) => `Lass jetzt jemanden sprechen, so laut wie die Klasse: ${talkS}\u00a0s Sprechen gehört.`,
    fork: 'Das Sprechen übertönt die Gabel. Schlag sie noch einmal an und halte sie näher ans Mikrofon.',
  },
  kept: {
    steady: (when, departureDb, limitDb, device) =>
      `Mit dem Experiment gespeichert: ${when}: unverändert, ${departureDb}\u00a0dB neben einem gleichmäßigen Abklingen (Grenze ${limitDb}\u00a0dB), ${device}.`,
    rewritten: (when, departureDb, limitDb, device) =>
      `Mit dem Experiment gespeichert: ${when}: verändert, ${departureDb}\u00a0dB neben einem gleichmäßigen Abklingen (Grenze ${limitDb}\u00a0dB), ${device}.`,
  },
  namelessDevice: 'Mikrofon ohne Namen',
  microphone: (number) => `Mikrofon ${number}`,
};
