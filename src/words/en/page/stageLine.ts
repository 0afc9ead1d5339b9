/** What is going on and what to do next, in one line that is read from afar. */
export const stageLine = {
  waiting: 'Waiting for the sound…',
  tooFast: 'Too fast: a resonance went by.',
  roomNoise: 'Measuring the room noise: keep quiet.',
  listenFirst: 'Press Listen. Then both hands are free for fork and tube.',
  openRecording: 'Open a recording of the fork over the column.',
  over: 'The recording is over.',
  overTypeLengths: 'The recording is over. Type the lengths of the marks.',
  strike: 'Listening. Strike the fork and hold it at the mouth.',
  slide: 'The fork is heard: slide slowly.',
  perhaps: 'Perhaps a resonance: slide past it again.',
  marked: 'Resonance marked. Go back to read it, or slide on.',
};
