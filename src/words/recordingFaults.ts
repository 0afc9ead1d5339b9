import type { RecordingFault } from '../capture/recordingFault.ts';
import type { FaultWords } from './faultWords.ts';
import { fixed } from './numbers.ts';

const CONVERT = 'Save it again as an ordinary WAV (PCM, 16 bits).';
const BYTES_PER_MB = 1_048_576;

/** Why a recording can’t be used, and what to do. */
export function recordingFaultWords(fault: RecordingFault): FaultWords {
  switch (fault.fault) {
    case 'no-wav':
      return { what: 'This file is not a WAV recording.', advice: 'Choose a sound file.' };
    case 'big-endian':
      return { what: 'This WAV has its bytes in the big-endian order.', advice: CONVERT };
    case 'no-coding':
      return { what: 'This WAV does not say how its sound is coded.', advice: CONVERT };
    case 'header-cut-off':
      return { what: 'The WAV is cut off within its header.', advice: 'Copy the file again.' };
    case 'not-decoded':
      return {
        what: 'The browser finds no sound that it can decode in this file.',
        advice:
          'Choose a recording (WAV, MP3, M4A, OGG or WebM); a table of lengths is opened under Records.',
      };
    case 'shorter':
      return { what: 'The file became shorter while it was read.', advice: 'Open it again.' };
    case 'unreadable':
      return {
        what: 'The file can’t be read any more: it was moved or changed.',
        advice: 'Choose it again.',
      };
    case 'coding': {
      const name = fault.name ?? `number ${fault.number}`;
      return { what: `This WAV is coded as ${name}, which can’t be read here.`, advice: CONVERT };
    }
    case 'channels':
      return {
        what: `This WAV claims ${fault.channelCount} channels (1 to 64 are possible).`,
        advice: CONVERT,
      };
    case 'sample-rate':
      return {
        what: `This WAV claims a sample rate of ${fault.sampleRateHz} Hz (4000 to 768000 are possible).`,
        advice: CONVERT,
      };
    case 'bits':
      return {
        what: `This WAV claims ${fault.bits} bits a sample in ${fault.bytesPerFrame} bytes a frame of ${fault.channelCount} channel(s), which can’t be read.`,
        advice: CONVERT,
      };
    case 'no-bytes':
      return { what: 'The file is empty (0 bytes).', advice: 'Choose another recording.' };
    case 'cut-off':
      return {
        what: 'The WAV ends before its sound begins: it was cut off or never finished.',
        advice: 'Copy the file again or choose another.',
      };
    case 'no-frames':
      return { what: 'The WAV holds no sound.', advice: 'Record again or choose another file.' };
    case 'no-sound':
      return { what: 'The file holds no sound.', advice: 'Record again or choose another file.' };
    case 'duration':
      return {
        what: `This recording lasts ${fixed(fault.durationS / 3600, 0)} hours; up to ${fixed(fault.mostS / 3600, 0)} are possible.`,
        advice: 'Cut it.',
      };
    case 'size':
      return {
        what: `This compressed recording has ${fixed(fault.bytes / BYTES_PER_MB, 0)} MB, more than the ${fixed(fault.mostBytes / BYTES_PER_MB, 0)} MB that a browser can hold at once.`,
        advice: 'Save it as a WAV, which may be any length, or cut it.',
      };
  }
}
