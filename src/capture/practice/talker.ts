import { Formant } from './formant.ts';
import type { SeededRandom } from './seededRandom.ts';

/** First three formants of common vowels, Hz. From memory, rounded, as first measured by Peterson & Barney 1952. */
const VOWELS: readonly [Vowel, ...Vowel[]] = [
  [270, 2290, 3010],
  [390, 1990, 2550],
  [530, 1840, 2480],
  [660, 1720, 2410],
  [730, 1090, 2440],
  [570, 840, 2410],
  [440, 1020, 2240],
  [300, 870, 2240],
  [640, 1190, 2390],
];
type Vowel = readonly [number, number, number];

/** Bandwidths of the formants, Hz. From memory. */
const BANDWIDTHS_HZ: Vowel = [80, 110, 160];
/** Share of the period in which the glottis opens, and in which it closes again. */
const OPENING = 0.4;
const CLOSING = 0.16;
/** Fitted so that the long-term spectrum comes near that of Byrne et al. 1994 (see the test). */
const HISS_GAIN = 6;
const LOWS_HZ = 200;
const LOW_LIFT = 4;
const HIGHS_HZ = 3000;
const HIGH_LIFT = 5;
/** How fast lips and tongue move, s. */
const GLIDE_S = 0.05;

/**
 * One person talking: a glottal pulse train of gliding pitch through moving formants, in syllables, phrases and
 * pauses. It says nothing, but its harmonics land on a fork's pitch as real ones do.
 */
export class Talker {
  private readonly formants: readonly [Formant, Formant, Formant];
  private readonly formantsHz: [number, number, number] = [500, 1500, 2500];
  private vowel: Vowel = [500, 1500, 2500];
  private readonly hiss: Formant;
  private pitchHz: number;
  private pitchGoalHz: number;
  private phase = 0;
  private lastFlow = 0;
  private voice = 0;
  private breath = 0;
  private syllableS = 0;
  private syllableLengthS = 0;
  private hissLengthS = 0;
  private syllablesLeft = 0;
  private pauseS: number;
  private lows = 0;
  private belowHighs = 0;
  private readonly lowGain: number;
  private readonly highGain: number;

  /**
   * @param pitchHz  mean of the voice: a man about 115, a woman 200, a child 270
   * @param tract  formants relative to a man's: a woman about 1.15, a child 1.3
   */
  constructor(
    private readonly random: SeededRandom,
    private readonly sampleRateHz: number,
    private readonly meanPitchHz: number,
    private readonly tract: number,
  ) {
    this.pitchHz = meanPitchHz;
    this.pitchGoalHz = meanPitchHz;
    this.pauseS = random.between(0, 0.6);
    this.formants = [new Formant(sampleRateHz), new Formant(sampleRateHz), new Formant(sampleRateHz)];
    this.hiss = new Formant(sampleRateHz);
    this.hiss.tune(Math.min(4500, 0.4 * sampleRateHz), 2500);
    this.lowGain = 1 - Math.exp((-2 * Math.PI * LOWS_HZ) / sampleRateHz);
    this.highGain = 1 - Math.exp((-2 * Math.PI * HIGHS_HZ) / sampleRateHz);
    this.tuneFormants();
  }

  /** Moves rhythm, pitch and formants on. @param stepS  about 1 ms */
  step(stepS: number): void {
    if (this.pauseS > 0) {
      this.pauseS -= stepS;
      this.glideTo(0, 0, stepS);
      if (this.pauseS <= 0) this.beginPhrase();
      return;
    }
    this.syllableS += stepS;
    if (this.syllableS >= this.syllableLengthS) {
      this.syllablesLeft -= 1;
      if (this.syllablesLeft <= 0) this.pauseS = this.random.between(0.25, 0.9);
      else this.beginSyllable();
    }
    const inHiss = this.syllableS < this.hissLengthS;
    const left = this.syllableLengthS - this.syllableS;
    this.glideTo(inHiss || left < 0.04 ? 0 : 1, inHiss ? 1 : 0.06, stepS);
  }

  next(): number {
    this.phase += this.pitchHz / this.sampleRateHz;
    if (this.phase >= 1) this.phase -= 1;
    const flow = glottalFlow(this.phase);
    const pulse = ((flow - this.lastFlow) * this.sampleRateHz) / this.meanPitchHz;
    this.lastFlow = flow;
    const noise = this.random.uniform() - 0.5;
    const [first, second, third] = this.formants;
    const voiced = third.next(second.next(first.next(this.voice * (pulse + 0.1 * noise))));
    return this.balance(voiced + HISS_GAIN * this.hiss.next(this.breath * noise));
  }

  /** Lifts both ends of the spectrum, which three formants leave too weak, to the long-term one of real talk. */
  private balance(sample: number): number {
    this.lows += this.lowGain * (sample - this.lows);
    this.belowHighs += this.highGain * (sample - this.belowHighs);
    return sample + LOW_LIFT * this.lows + HIGH_LIFT * (sample - this.belowHighs);
  }

  private beginPhrase(): void {
    this.syllablesLeft = Math.ceil(this.random.between(4, 14));
    this.beginSyllable();
  }

  private beginSyllable(): void {
    this.syllableS = 0;
    this.syllableLengthS = this.random.between(0.13, 0.3);
    this.hissLengthS = this.random.uniform() < 0.4 ? this.random.between(0.05, 0.1) : 0;
    this.vowel = this.random.pick(VOWELS);
    // A sentence falls in pitch and rises again on stressed syllables: about ±3 semitones.
    const semitones = 2.2 * this.random.normal() + 0.25 * (this.syllablesLeft - 6);
    this.pitchGoalHz = this.meanPitchHz * 2 ** (Math.max(-7, Math.min(7, semitones)) / 12);
  }

  private glideTo(voice: number, breath: number, stepS: number): void {
    const soon = 1 - Math.exp(-stepS / 0.015);
    this.voice += soon * (voice - this.voice);
    this.breath += soon * (breath - this.breath);
    this.pitchHz += (1 - Math.exp(-stepS / 0.08)) * (this.pitchGoalHz - this.pitchHz);
    const glide = 1 - Math.exp(-stepS / GLIDE_S);
    this.formantsHz.forEach((hz, i) => {
      this.formantsHz[i] = hz + glide * ((this.vowel[i] ?? hz) - hz);
    });
    this.tuneFormants();
  }

  private tuneFormants(): void {
    this.formants.forEach((formant, i) => {
      const hz = Math.min((this.formantsHz[i] ?? 500) * this.tract, 0.45 * this.sampleRateHz);
      formant.tune(hz, BANDWIDTHS_HZ[i] ?? 100);
    });
  }
}

/** Air flow through the glottis over one period, 0..1. @see Rosenberg 1971, J. Acoust. Soc. Am. 49, 583 */
function glottalFlow(phase: number): number {
  if (phase < OPENING) return 0.5 * (1 - Math.cos((Math.PI * phase) / OPENING));
  if (phase < OPENING + CLOSING) return Math.cos((Math.PI * (phase - OPENING)) / (2 * CLOSING));
  return 0;
}
