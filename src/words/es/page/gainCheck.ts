import type { LaterWords } from '../../catalogue.ts';

export const gainAnswer: LaterWords['gainAnswer'] = {
  verdicts: { rewritten: 'Con cambios', steady: 'Sin cambios', 'cannot-tell': 'Escuchando' },
  details: {
    rewritten: (departureDb) =>
      `El nivel se aparta ${departureDb}\u00a0dB de una caída regular. Algo entre el micrófono y la página lo cambia.`,
    steady: (departureDb) =>
      `El diapasón se apagó con regularidad, dentro de ${departureDb}\u00a0dB, mientras alguien hablaba.`,
  },
  waits: {
    strike: 'Golpea el diapasón una vez y mantenlo quieto, cerca del micrófono.',
    time: (followedS) => `No te muevas y seguid hablando: ${followedS}\u00a0s oídos.`,
    talk: (talkS) => `Que alguien hable ahora, tan alto como la clase: ${talkS}\u00a0s de voz oídos.`,
    fork: 'La voz tapa el diapasón. Golpéalo otra vez y acércalo al micrófono.',
  },
  kept: {
    steady: (when, departureDb, limitDb, device) =>
      `Guardado con el experimento: ${when}: sin cambios, a ${departureDb}\u00a0dB de una caída regular (límite ${limitDb}\u00a0dB), ${device}.`,
    rewritten: (when, departureDb, limitDb, device) =>
      `Guardado con el experimento: ${when}: con cambios, a ${departureDb}\u00a0dB de una caída regular (límite ${limitDb}\u00a0dB), ${device}.`,
  },
  namelessDevice: 'micrófono sin nombre',
  microphone: (number) => `Micrófono ${number}`,
};
