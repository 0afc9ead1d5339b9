import { fixed } from '../../numbers.ts';

/** The cards of the view, as the way to them calls them. */
export const check = {
  ways: 'Checks',
  sound: 'Sound',
  gain: 'Gain',
  length: 'A length',
  tone: 'Played tone',
  sweep: 'Sweep',
};

export const checkLength = {
  heading: 'Check a length',
  lead: 'The column stays as it is. Strike the fork, hold it at the mouth and away from it in turn: the bench says whether this length resonates.',
  begin: 'Begin the check',
  again: 'Begin again',
  end: 'End the check',
  listenFirst: 'Begin to listen first.',
};

export const gainCheck = {
  name: 'Gain check',
  heading: 'Is the level left alone?',
  lead: 'Systems made for calls ride on the gain and take away what doesn’t sound like speech, forks above all. In a quiet room that doesn’t show.',
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
  heading: 'Sound check',
  lead: 'Listen, keep quiet for three seconds, then strike the fork and hold it away from the tube.',
  fork: 'Fork',
  use: 'Use the measured pitch in the fit',
  used: 'The measured pitch now counts in the fit.',
  caution: 'Strike the fork on rubber or the sole of a shoe, never on glass or a hard edge.',
  usePractice: {
    heading: 'Use the pitch of the practice fork?',
    message:
      'What was heard is the practice fork. Its pitch would count for this experiment’s fork, for marks made with a real one too.',
    no: 'Leave the fork as it is',
    yes: 'Use it',
  },
};

export const tone = {
  heading: 'Played tone',
  lead: 'In place of a fork: a steady sine from a loudspeaker held at the mouth of the column.',
  pitch: 'Pitch of the tone',
  loudness: 'Loudness',
  loudnessNow: (percent: number) => `${percent} % of the cap`,
  play: 'Play the tone',
  stop: 'Stop the tone',
  caution:
    'Starts quiet and stays below a cap. Turn the device’s own volume down first, and never play it into headphones on somebody’s ears.',
};

export const sweepCard = {
  heading: 'Sweep a fixed column',
  lead: 'The length stays, a played tone rises slowly and falls again. Where both ways are loudest, the column resonates.',
  length: 'Length of the column',
  lengthField: 'Length of the swept column',
  from: 'Sweep from',
  to: 'Sweep to',
  practice: 'Practice: simulated, plays nothing aloud',
  start: 'Start the sweep',
  cancel: 'Cancel the sweep',
  /** @param durationS  null where no such sweep is possible */
  takes: (durationS: number | null) => `takes ${durationS === null ? '—' : `${fixed(durationS, 0)} s`}`,
  sweeping: 'Sweeping',
  soFar: 'What was heard until now. A resonance shows as a hill, on the way up and on the way back.',
  noLength: 'Type the length that the column is held at first.',
  noResonance:
    'No resonance of this column was heard on both ways. Bring loudspeaker and microphone closer to the mouth, or sweep further.',
  order: 'Order',
  resonance: 'Resonance',
  speed: 'Speed by it',
  note: 'Keep it in the notes',
  noted: 'The sweep’s result stands in the notes under Records.',
  doubts: 'Can this sweep be trusted?',
  inDoubt: 'In doubt.',
  notProven: 'Not proven raw.',
  caution:
    'The loudspeaker goes to the mouth of the column, the microphone beside it. The tone starts quiet and stays below a cap. Turn the device’s own volume down first, and never play it into headphones on somebody’s ears.',
};
