import type { ChannelReason } from '../capture/channelJudge.ts';
import { words } from './inUse.ts';
import { listed } from './lists.ts';

/** Which of several channels is used and why; people count channels from 1. */
export function channelWords({ channel, channelCount, faults, isLessNoisy }: ChannelReason): string {
  const said = words.soundChannel;
  if (faults.length > 0) {
    const others = faults.map(({ channel: other, fault }) => said.fault[fault](other + 1));
    return said.othersFail(channel + 1, channelCount, listed(others));
  }
  return isLessNoisy ? said.lessNoisy(channel + 1, channelCount) : said.noneBetter(channel + 1, channelCount);
}
