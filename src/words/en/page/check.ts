import { fixed } from '../../numbers.ts';

/** The cards of the view, as the way to them calls them. */
export const check = {
  ways: 'Checks',
  sound: 'Input and fork',
  gain: 'Gain',
  length: 'A length',
  tone: 'Played tone',
  sweep: 'Sweep',
};

export const checkLength = {
  heading: 'Check a length',
  lead: 'The column stays as it is. Strike the fork, hold it at the mouth and away from it in turn: this page says whether this length resonates.',
  begin: 'Begin the check',
  again: 'Begin again',
  end: 'End the check',
  listenFirst: 'Press Listen first.',
};

export const gainCheck = {
  name: 'Gain check',
  heading: 'Does anything change the level?',
  lead: 'Systems made for calls change the volume by themselves and remove sounds that aren’t speech, forks above all. In a quiet room that doesn’t show.',
  browserSays: 'What the browser says',
  steps: [
    'Fix the column and the microphone.',
    'Strike the fork once, on rubber, and rest its stem near the microphone.',
    'Hold still for ten seconds while somebody talks.',
  ],
  begin: 'Begin the gain check',
  again: 'Begin again',
  end: 'End the gain check',
  listenFirst: 'Listen to the microphone first.',
  help: 'Help with the microphone, and what an administrator can do',
  microphone: 'Microphone',
  systemsChoice: 'The system’s choice',
};

export const soundCheck = {
  heading: 'Input and fork',
  lead: 'Press Listen, keep quiet for three seconds, then strike the fork and hold it away from the tube.',
  fork: 'Fork',
  use: 'Use the measured frequency in the fit',
  used: 'The measured frequency now counts in the fit.',
  caution: 'Strike the fork on rubber or the sole of a shoe, never on glass or a hard edge.',
  usePractice: {
    heading: 'Use the frequency of the practice fork?',
    message:
      'What was heard is the practice fork. Its frequency would count for this experiment’s fork, for marks made with a real one too.',
    no: 'Leave the fork as it is',
    yes: 'Use it',
  },
};

export const tone = {
  heading: 'Played tone',
  lead: 'In place of a fork: a steady sine from a loudspeaker held at the mouth of the column.',
  pitch: 'Frequency of the tone',
  loudness: 'Loudness',
  loudnessNow: (percent: number) => `${percent} % of the limit`,
  play: 'Play the tone',
  stop: 'Stop the tone',
  /** Stands before whatever plays a tone. */
  mute: 'A phone or tablet plays nothing while its mute switch is on: turn it off first.',
  cannotPlay:
    'The tone can’t be played here. Check that a loudspeaker is connected and no other program holds it, then try again; if that doesn’t help, reload the page.',
  caution:
    'Starts quiet and stays below a limit. Turn the device’s own volume down first, and never play it through headphones that someone is wearing.',
};

export const sweepCard = {
  heading: 'Sweep a fixed column',
  lead: 'The length stays; a played tone rises slowly and falls again. Where it is loudest both on the way up and on the way down, the column resonates.',
  length: 'Length of the column',
  lengthField: 'Length of the swept column',
  from: 'Sweep from',
  to: 'Sweep to',
  practice: 'Practice: simulated, plays nothing aloud',
  start: 'Start the sweep',
  cancel: 'Cancel the sweep',
  takes: (durationS: number) => `takes ${fixed(durationS, 0)} s`,
  /** Where no such sweep is possible. */
  takesUnknown: 'takes —',
  sweeping: 'Sweeping',
  soFar: 'What was heard until now. A resonance shows as a hill, on the way up and on the way down.',
  noLength: 'First type the length of the column.',
  noResonance:
    'No resonance of this column was heard both on the way up and on the way down. Bring loudspeaker and microphone closer to the mouth, or sweep further.',
  order: 'Order',
  resonance: 'Resonance',
  speed: 'Speed from it',
  note: 'Add it to the notes',
  noted: 'The sweep’s result is in the notes now, under Records.',
  doubts: 'Can this sweep be trusted?',
  inDoubt: 'In doubt.',
  notProven: 'Not checked yet.',
  caution:
    'The loudspeaker goes to the mouth of the column, the microphone beside it. The tone starts quiet and stays below a limit. Turn the device’s own volume down first, and never play it through headphones that someone is wearing.',
};
