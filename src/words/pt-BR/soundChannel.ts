import type { FirstWords } from '../catalogue.ts';

export const soundChannel: FirstWords['soundChannel'] = {
  othersFail: (channel, count, faults) => `O canal ${channel} de ${count} é usado: ${faults}.`,
  lessNoisy: (channel, count) => `O canal ${channel} de ${count} é usado: ele tem menos ruído.`,
  noneBetter: (channel, count) => `O canal ${channel} de ${count} é usado: nenhum outro é claramente melhor.`,
  fault: {
    silent: (channel) => `o canal ${channel} está mudo`,
    clips: (channel) => `o canal ${channel} satura`,
    'fell-silent': (channel) => `o canal ${channel} ficou mudo`,
  },
};
