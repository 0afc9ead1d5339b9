/** What the check of input and fork has found out. */
export const soundFact = {
  names: { raw: 'Raw sound', input: 'Input', room: 'Room noise' },
  raw: {
    'not listening': 'press Listen first',
    'nothing processes': 'yes, nothing processes this source',
    off: 'yes, the browser’s processing is off',
    'not said': 'the browser doesn’t say; do the gain check',
    'level changed': 'no: the browser changes the level. Try another browser or microphone',
  },
  nothingHeard: 'nothing heard yet',
  upTo: (loudestDb: string) => `up to ${loudestDb} dB (0 dB: a sine of full scale)`,
  faint: (loudestDb: string) => `up to ${loudestDb} dB (0 dB: a sine of full scale); very faint`,
  roomUnheard: 'not heard yet',
  room: (roomDb: string) => `${roomDb} dB at the fork’s frequency`,
};

/** The fork's frequency as heard, against its stamp. */
export const forkFinding = {
  none: 'strike it to measure its real frequency',
  measured: (frequencyHz: string, uncertaintyHz: string, offHz: string, offPercent: string) =>
    `${frequencyHz} ± ${uncertaintyHz} Hz, ${offHz} Hz (${offPercent} %) from its stamp`,
  withDecay: (measured: string, decayTimeS: string) => `${measured}; it falls to 1/e in ${decayTimeS} s`,
};
