import { ENDS_LONG } from '../columnEnds.ts';
import { stepsThatAre } from '../../capture/processingSteps.ts';
import type { CaptureSettings } from '../../capture/soundSource.ts';
import type { Stopper } from '../../notebook/experiment.ts';
import { fixed, stampedHertz } from '../numbers.ts';

/** Where the sound comes from. */
export const sourceWords = {
  legend: 'Sound from',
  names: { practice: 'Practice column', microphone: 'Microphone', recording: 'Recording' },
  listen: 'Listen',
  stop: 'Stop',
  open: 'Open a recording',
  file: 'Recording to open',
  progress: 'Listening to the recording',
} as const;

/** The microphone's sound in three words; what to do about one that isn't raw stands elsewhere. */
export function soundWords(settings: CaptureSettings, sampleRateHz: number): string {
  const worst = (['on', 'unknown'] as const).find((state) => stepsThatAre(state, settings).length > 0);
  return `${fixed(sampleRateHz / 1000, 1)} kHz, ${RAW_WORDS[worst ?? 'off']}`;
}

const RAW_WORDS = { on: 'not raw', unknown: 'not proven raw', off: 'raw' } as const;

/** What is measured now. */
export const nowWords = {
  legend: 'Measured now',
  fork: 'Fork',
  pitch: (frequencyHz: number) => `${stampedHertz(frequencyHz)} Hz`,
  addFork: 'Add a fork…',
  alsoChange: (count: number) => `Also change the ${count === 1 ? 'mark' : `${count} marks`} made so far`,
  column: 'Column',
  ends: ENDS_LONG,
  place: 'Place',
} as const;

/** What is drawn in the column. */
export const drawnWords = {
  wave: 'Wave',
  waveNamed: 'Wave drawn',
  waves: { pressure: 'pressure', displacement: 'displacement', none: 'nothing' },
  expected: 'Expected places',
} as const;

/** The level above the room, read from afar. */
export const readoutWords = {
  none: '–',
  level: (riseDb: number) => fixed(riseDb, 0),
  unit: 'dB above the room',
  noneSpoken: 'Rise above the room: no tone heard',
  levelSpoken: (riseDb: number) => `Rise above the room: ${fixed(riseDb, 0)} decibels`,
  check: (sign: string, verdict: string) => `This length: ${sign} ${verdict}`,
} as const;

/** What to do to a column that is too long, and to one that is too short. */
const MOVES: Readonly<Record<Stopper, readonly [tooLong: string, tooShort: string]>> = {
  piston: ['push in', 'pull out'],
  dipped: ['lower the tube', 'raise the tube'],
  filled: ['raise the water', 'lower the water'],
};

const moveWords = (isTooLong: boolean, stopper: Stopper): string => MOVES[stopper][isTooLong ? 0 : 1];

/** The way back to the resonance. */
export const wayBackWords = {
  idle: 'Back to the resonance',
  here: 'Here.',
  holdStill: 'Hold still and read the rule.',
  atMaximum: 'At the loudest place.',
  /** Millimetres, without their side. */
  distance: (distanceM: number) => distanceWords(distanceM),
  toGo: 'mm to go',
  hereLarge: 'Here',
  nothingToGo: 'read the rule',
  /** The side, in words of the apparatus in use. */
  off: (halfWidths: number, stopper: Stopper) => {
    const isTooLong = halfWidths > 0;
    return `${isTooLong ? 'too long' : 'too short'}: ${moveWords(isTooLong, stopper)}`;
  },
  heardAgo: (ageS: number) => `(${fixed(Math.max(1, ageS), 0)} s ago)`,
  lost: 'Can’t tell where. Slide past once more, then come back from both sides.',
  byLevel: 'Back to the loudest place: pass it from both sides.',
  tooShort: 'too short',
  tooLong: 'too long',
  spoken: {
    here: 'Here. Hold still.',
    atMaximum: 'At the loudest place.',
    /** @param distanceM  null where the tube isn't known */
    off: (isTooLong: boolean, distanceM: number | null, stopper: Stopper) => {
      const by = distanceM === null ? '' : ` by ${spokenDistance(distanceM)} mm`;
      return `${isTooLong ? 'Too long' : 'Too short'}${by}: ${moveWords(isTooLong, stopper)}.`;
    },
    lost: 'Can’t tell. Slide past once more.',
    close: 'Close to the loudest place.',
    away: 'Away from the loudest place.',
  },
} as const;

/** Tenths of a millimetre where they count. */
const distanceWords = (distanceM: number): string => {
  const mm = Math.abs(1000 * distanceM);
  return fixed(mm, mm < 9.95 ? 1 : 0);
};

/** For the ear coarser than for the eye, or a hand that moves would hear numbers only. */
const spokenDistance = (distanceM: number): string => {
  const mm = Math.abs(1000 * distanceM);
  const step = mm < 3 ? 0.5 : mm < 10 ? 1 : 5;
  return fixed(Math.max(Math.round(mm / step) * step, step), step < 1 ? 1 : 0);
};

/** A task that a lesson sets. */
export const taskWords = { task: 'Task:' } as const;
