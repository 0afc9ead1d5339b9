import type { RecordingFault } from '../capture/recordingFault.ts';
import type { FaultWords } from './faultWords.ts';
import { words } from './inUse.ts';
import { fixed } from './numbers.ts';

const BYTES_PER_MB = 1_048_576;

/** What a header may claim (capture/wav/wavHeader.ts). */
const MOST_CHANNELS = 64;
const LOWEST_RATE_HZ = 4000;
const HIGHEST_RATE_HZ = 768_000;

/** Why a recording can’t be used, and what to do. */
export function recordingFaultWords(fault: RecordingFault): FaultWords {
  const said = words.recordingFault;
  const advice = said.convert;
  switch (fault.fault) {
    case 'big-endian':
      return { what: said.bigEndian, advice };
    case 'no-coding':
      return { what: said.noCoding, advice };
    case 'coding':
      return {
        what: fault.name === null ? said.codingNumber(fault.number) : said.coding(fault.name),
        advice,
      };
    case 'channels':
      return { what: said.channels(fault.channelCount, MOST_CHANNELS), advice };
    case 'sample-rate':
      return { what: said.sampleRate(fault.sampleRateHz, LOWEST_RATE_HZ, HIGHEST_RATE_HZ), advice };
    case 'bits':
      return { what: said.bits(fault.bits, fault.bytesPerFrame, fault.channelCount), advice };
    case 'duration':
      return {
        what: said.duration.what(fixed(fault.durationS / 3600, 0), fixed(fault.mostS / 3600, 0)),
        advice: said.duration.advice,
      };
    case 'size':
      return {
        what: said.size.what(fixed(fault.bytes / BYTES_PER_MB, 0), fixed(fault.mostBytes / BYTES_PER_MB, 0)),
        advice: said.size.advice,
      };
    default:
      return said.said[fault.fault];
  }
}
