import type { FirstWords } from '../catalogue.ts';

export const soundChannel: FirstWords['soundChannel'] = {
  othersFail: (channel, count, faults) => `Kanal ${channel} von ${count} wird benutzt: ${faults}.`,
  lessNoisy: (channel, count) => `Kanal ${channel} von ${count} wird benutzt: Er rauscht weniger.`,
  noneBetter: (channel, count) =>
    `Kanal ${channel} von ${count} wird benutzt: Kein anderer ist deutlich besser.`,
  fault: {
    silent: (channel) => `Kanal ${channel} ist stumm`,
    clips: (channel) => `Kanal ${channel} übersteuert`,
    'fell-silent': (channel) => `Kanal ${channel} ist verstummt`,
  },
};
