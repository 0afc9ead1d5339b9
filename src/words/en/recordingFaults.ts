/** Why a recording can't be used, and what to do. */
export const recordingFault = {
  convert: 'Save it again as an ordinary WAV (PCM, 16 bits).',
  said: {
    'no-wav': { what: 'This file is not a WAV recording.', advice: 'Choose a sound file.' },
    'header-cut-off': { what: 'The WAV is cut off within its header.', advice: 'Copy the file again.' },
    'not-decoded': {
      what: 'The browser finds no sound in this file that it can play.',
      advice: 'Choose a recording (WAV, MP3, M4A, OGG or WebM); open a table of lengths under Records.',
    },
    shorter: { what: 'The file became shorter while it was read.', advice: 'Open it again.' },
    unreadable: {
      what: 'The file can’t be read any more: it was moved or changed.',
      advice: 'Choose it again.',
    },
    'no-bytes': { what: 'The file is empty (0 bytes).', advice: 'Choose another recording.' },
    'cut-off': {
      what: 'The WAV ends before its sound begins: it was cut off or never finished.',
      advice: 'Copy the file again or choose another.',
    },
    'no-frames': { what: 'The WAV holds no sound.', advice: 'Record again or choose another file.' },
    'no-sound': { what: 'The file holds no sound.', advice: 'Record again or choose another file.' },
  },
  bigEndian: 'This WAV has its bytes in the big-endian order.',
  noCoding: 'This WAV does not say how its sound is coded.',
  coding: (name: string) => `This WAV is coded as ${name}, which can’t be read here.`,
  codingNumber: (number: number) => `This WAV is coded as number ${number}, which can’t be read here.`,
  channels: (channels: number, most: number) =>
    `This WAV claims ${channels} channels (1 to ${most} are possible).`,
  sampleRate: (sampleRateHz: number, lowestHz: number, highestHz: number) =>
    `This WAV claims a sample rate of ${sampleRateHz} Hz (${lowestHz} to ${highestHz} are possible).`,
  bits: (bits: number, bytesPerFrame: number, channels: number) =>
    `This WAV claims ${bits} bits a sample in ${bytesPerFrame} bytes a frame of ${channels} channel(s), which can’t be read.`,
  duration: {
    what: (hours: string, mostHours: string) =>
      `This recording lasts ${hours} hours; up to ${mostHours} are possible.`,
    advice: 'Cut it.',
  },
  size: {
    what: (megabytes: string, mostMegabytes: string) =>
      `This compressed recording has ${megabytes} MB, more than the ${mostMegabytes} MB that a browser can hold at once.`,
    advice: 'Save it as a WAV, which may be any length, or cut it.',
  },
};
