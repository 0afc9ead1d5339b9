import type { FirstWords } from '../catalogue.ts';

export const soundChannel: FirstWords['soundChannel'] = {
  othersFail: (channel, count, faults) => `Le canal ${channel} sur ${count} est utilisé\u00a0: ${faults}.`,
  lessNoisy: (channel, count) => `Le canal ${channel} sur ${count} est utilisé\u00a0: il est moins bruité.`,
  noneBetter: (channel, count) =>
    `Le canal ${channel} sur ${count} est utilisé\u00a0: aucun autre n’est nettement meilleur.`,
  fault: {
    silent: (channel) => `le canal ${channel} est muet`,
    clips: (channel) => `le canal ${channel} est écrêté`,
    'fell-silent': (channel) => `le canal ${channel} est devenu muet`,
  },
};
