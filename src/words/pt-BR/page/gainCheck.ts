import type { LaterWords } from '../../catalogue.ts';

export const gainAnswer: LaterWords['gainAnswer'] = {
  verdicts: { rewritten: 'Com mudança', steady: 'Sem mudança', 'cannot-tell': 'Ouvindo' },
  details: {
    rewritten: (departureDb) =>
      `O nível se afasta ${departureDb}\u00a0dB de um decaimento regular. Algo entre o microfone e a página o muda.`,
    steady: (departureDb) =>
      `O diapasão decaiu com regularidade, dentro de ${departureDb}\u00a0dB, enquanto alguém falava.`,
  },
  waits: {
    strike: 'Bata no diapasão uma vez e segure-o parado, perto do microfone.',
    time: (followedS) => `Fique parado e continuem falando: ${followedS}\u00a0s ouvidos.`,
    talk: (talkS) => `Agora peça que alguém fale, tão alto quanto a turma: ${talkS}\u00a0s de fala ouvidos.`,
    fork: 'A fala encobre o diapasão. Bata nele mais uma vez e segure-o mais perto do microfone.',
  },
  kept: {
    steady: (when, departureDb, limitDb, device) =>
      `Salvo com o experimento: ${when}: sem mudança, a ${departureDb}\u00a0dB de um decaimento regular (limite ${limitDb}\u00a0dB), ${device}.`,
    rewritten: (when, departureDb, limitDb, device) =>
      `Salvo com o experimento: ${when}: com mudança, a ${departureDb}\u00a0dB de um decaimento regular (limite ${limitDb}\u00a0dB), ${device}.`,
  },
  namelessDevice: 'microfone sem nome',
  microphone: (number) => `Microfone ${number}`,
};
