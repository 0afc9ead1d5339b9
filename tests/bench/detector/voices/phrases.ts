import type { Random } from '../random.ts';

/** First three resonances of a vocal tract, Hz. */
export type Formants = readonly [number, number, number];

/** What a mouth does for a while: goals that its parts move towards. */
export interface Gesture {
  readonly durationS: number;
  /** Strength of the glottis' pulses, 1 in a vowel of usual stress. */
  readonly voice: number;
  /** Strength of the noise that a narrow place in the mouth makes, 1 in a usual s. */
  readonly hiss: number;
  /** Middle of that noise's band, Hz. */
  readonly hissHz: number;
  readonly formantsHz: Formants;
  /** Pitch against the voice's mean. */
  readonly pitch: number;
}

/**
 * Ten vowels of men, Hz. @see Peterson & Barney 1952, J. Acoust. Soc. Am. 24, 175, table II; from memory, rounded to 10
 */
const VOWELS_HZ: readonly Formants[] = [
  [270, 2290, 3010],
  [390, 1990, 2550],
  [530, 1840, 2480],
  [660, 1720, 2410],
  [730, 1090, 2440],
  [570, 840, 2410],
  [440, 1020, 2240],
  [300, 870, 2240],
  [640, 1190, 2390],
  [490, 1350, 1690],
];
/** Those of most syllables in talk: unstressed e, short i, long i. Common practice, no source. */
const FREQUENT_HZ: readonly Formants[] = [
  [500, 1500, 2500],
  [390, 1990, 2550],
  [270, 2290, 3010],
];
/** The nose's lowest resonance, with the mouth closed. Common practice, no source. */
const NASAL_HZ: Formants = [280, 1200, 2300];
/** Bands of sh, s, s of a small mouth, f; and of the bursts of p, k and t. Common practice, no source. */
const FRICATIVES_HZ = [3000, 5500, 7500, 9500] as const;
const BURSTS_HZ = [900, 1800, 4000] as const;

/** A phrase: syllables with their consonants, falling in pitch, and the pause after it. */
export function phrase(random: Random): Gesture[] {
  const gestures: Gesture[] = [];
  const syllables = random.integer(3, 13);
  for (let left = syllables; left > 0; left -= 1) {
    // A sentence falls by some semitones and rises again on stressed syllables.
    const semitones = 2 * random.gauss() + 0.4 * (left - syllables / 2);
    const pitch = 2 ** (Math.max(-7, Math.min(7, semitones)) / 12);
    gestures.push(...syllable(random, pitch));
  }
  const last = gestures.at(-1);
  gestures.push(pause(random, random.uniform(0.15, random.chance(0.3) ? 1.4 : 0.6), last?.formantsHz));
  return gestures;
}

function syllable(random: Random, pitch: number): Gesture[] {
  const stress = Math.exp(0.3 * random.gauss());
  const vowel: Gesture = {
    durationS: random.uniform(0.08, 0.22),
    voice: stress,
    hiss: 0,
    hissHz: 5000,
    formantsHz: random.pick(random.chance(0.55) ? FREQUENT_HZ : VOWELS_HZ),
    pitch,
  };
  const consonants = [...onset(random, vowel), vowel];
  if (random.chance(0.3)) consonants.push(fricative(random, vowel, 0.7));
  return consonants;
}

function onset(random: Random, vowel: Gesture): Gesture[] {
  const kind = random.next();
  if (kind < 0.3) return [fricative(random, vowel, 1)];
  if (kind < 0.6) {
    const burst = { ...vowel, voice: 0.1, hiss: random.uniform(0.4, 1), hissHz: random.pick(BURSTS_HZ) };
    return [
      { ...vowel, voice: 0.02, durationS: random.uniform(0.035, 0.07) },
      { ...burst, durationS: random.uniform(0.012, 0.03) },
    ];
  }
  if (kind < 0.85) {
    const voice = 0.4 * vowel.voice;
    return [{ ...vowel, voice, formantsHz: NASAL_HZ, durationS: random.uniform(0.04, 0.08) }];
  }
  return [];
}

function fricative(random: Random, vowel: Gesture, strength: number): Gesture {
  const isVoiced = random.chance(0.3);
  return {
    ...vowel,
    voice: isVoiced ? 0.25 * vowel.voice : 0,
    hiss: strength * Math.exp(0.3 * random.gauss()) * (isVoiced ? 0.5 : 1),
    hissHz: random.pick(FRICATIVES_HZ),
    durationS: random.uniform(0.05, 0.12),
  };
}

/** Nothing said: the breath goes on, some 35 dB below the talk. Common practice, no source. */
export function pause(random: Random, durationS: number, formantsHz: Formants = NASAL_HZ): Gesture {
  return { durationS, voice: 0, hiss: random.uniform(0.01, 0.03), hissHz: 3000, formantsHz, pitch: 1 };
}
