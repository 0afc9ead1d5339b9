import type { ChannelReason } from '../../capture/channelJudge.ts';

/** Which of several channels is used and why. Channels are counted from 1. */
export const soundChannel = {
  /** @param faults  of the others, as `fault` says them */
  othersFail: (channel: number, count: number, faults: string) =>
    `Channel ${channel} of ${count} is used: ${faults}.`,
  lessNoisy: (channel: number, count: number) => `Channel ${channel} of ${count} is used: it is less noisy.`,
  noneBetter: (channel: number, count: number) =>
    `Channel ${channel} of ${count} is used: no other is clearly better.`,
  fault: {
    silent: (channel: number) => `channel ${channel} is silent`,
    clips: (channel: number) => `channel ${channel} clips`,
    'fell-silent': (channel: number) => `channel ${channel} fell silent`,
  } satisfies Readonly<Record<ChannelReason['faults'][number]['fault'], (channel: number) => string>>,
};
