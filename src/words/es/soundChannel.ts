import type { FirstWords } from '../catalogue.ts';

export const soundChannel: FirstWords['soundChannel'] = {
  othersFail: (channel, count, faults) => `Se usa el canal ${channel} de ${count}: ${faults}.`,
  lessNoisy: (channel, count) => `Se usa el canal ${channel} de ${count}: tiene menos ruido.`,
  noneBetter: (channel, count) => `Se usa el canal ${channel} de ${count}: ningún otro es claramente mejor.`,
  fault: {
    silent: (channel) => `el canal ${channel} está mudo`,
    clips: (channel) => `el canal ${channel} se recorta`,
    'fell-silent': (channel) => `el canal ${channel} se quedó mudo`,
  },
};
