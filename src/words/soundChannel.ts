import type { ChannelReason } from '../capture/channelJudge.ts';

const FAULTS = { silent: 'is silent', clips: 'clips', 'fell-silent': 'fell silent' } as const;

/** Which of several channels is used and why; people count channels from 1. */
export function channelWords({ channel, channelCount, faults, isLessNoisy }: ChannelReason): string {
  const others = faults.map(({ channel: other, fault }) => `channel ${other + 1} ${FAULTS[fault]}`);
  const quality = isLessNoisy ? 'it is less noisy' : 'no other is clearly better';
  const why = others.length > 0 ? others.join(', ') : quality;
  return `Channel ${channel + 1} of ${channelCount} is used: ${why}.`;
}
