import type { FirstWords } from '../catalogue.ts';

export const soundChannel: FirstWords['soundChannel'] = {
  othersFail: (channel, count, faults) => `Używany jest kanał ${channel} z ${count}: ${faults}.`,
  lessNoisy: (channel, count) => `Używany jest kanał ${channel} z ${count}: mniej szumi.`,
  noneBetter: (channel, count) =>
    `Używany jest kanał ${channel} z ${count}: żaden inny nie jest wyraźnie lepszy.`,
  fault: {
    silent: (channel) => `kanał ${channel} jest niemy`,
    clips: (channel) => `kanał ${channel} jest przesterowany`,
    'fell-silent': (channel) => `kanał ${channel} zamilkł`,
  },
};
