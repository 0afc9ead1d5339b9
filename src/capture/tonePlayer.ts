import { requireInRange } from '../air/requireInRange.ts';
import { LIMITS } from '../limits/limits.ts';
import { checkSweepPlan, sweepDurationS } from './sweepPlan.ts';
import type { SweepPlan } from './sweepPlan.ts';

/** Loudest amplitude played, of full scale: enough at a column's mouth, far from what hurts. A judgement. */
export const LOUDEST_AMPLITUDE = 0.2;
/** Time over which the tone swells and fades, s: no click, and time to take the hand to the volume. */
export const SWELL_S = 1.5;
const FADE_S = 0.1;

/** A sine in place of a fork. Starts quiet, swells slowly, and never passes the cap. */
export class TonePlayer {
  private context: AudioContext | null = null;
  private oscillator: OscillatorNode | null = null;
  private gain: GainNode | null = null;

  get isPlaying(): boolean {
    return this.oscillator !== null;
  }

  /**
   * Plays until it is stopped; a tone that plays already is retuned. Call it from a button.
   * @param frequencyHz  any pitch of a fork, 60.8..4300.8
   * @param amplitude  0..LOUDEST_AMPLITUDE, of full scale
   * @throws RangeError outside of those ranges
   */
  async play(frequencyHz: number, amplitude: number): Promise<void> {
    requireInRange('frequencyHz', frequencyHz, LIMITS.pitchHz.lowest, LIMITS.pitchHz.highest);
    if (!(amplitude >= 0 && amplitude <= LOUDEST_AMPLITUDE)) {
      throw new RangeError(`amplitude must be 0..${LOUDEST_AMPLITUDE}, got ${amplitude}`);
    }
    const context = (this.context ??= new AudioContext());
    await context.resume();
    if (this.gain === null || this.oscillator === null) {
      this.gain = new GainNode(context, { gain: 0 });
      this.oscillator = new OscillatorNode(context, { type: 'sine', frequency: frequencyHz });
      this.oscillator.connect(this.gain).connect(context.destination);
      this.oscillator.start();
    }
    this.oscillator.frequency.setValueAtTime(frequencyHz, context.currentTime);
    this.gain.gain.cancelScheduledValues(context.currentTime);
    this.gain.gain.setValueAtTime(this.gain.gain.value, context.currentTime);
    this.gain.gain.linearRampToValueAtTime(amplitude, context.currentTime + SWELL_S);
  }

  /**
   * Plays a tone that rises and falls again once; it swells at the first pitch before it begins to move.
   * @param amplitude  0..LOUDEST_AMPLITUDE, of full scale
   * @throws RangeError outside of the plan's and the amplitude's ranges
   */
  async sweep(plan: SweepPlan, amplitude: number): Promise<void> {
    checkSweepPlan(plan);
    await this.play(plan.fromHz, amplitude);
    if (this.context === null || this.oscillator === null) return;
    const startS = this.context.currentTime + SWELL_S;
    const endS = startS + sweepDurationS(plan);
    const { frequency } = this.oscillator;
    frequency.setValueAtTime(plan.fromHz, startS);
    frequency.linearRampToValueAtTime(plan.toHz, (startS + endS) / 2);
    frequency.linearRampToValueAtTime(plan.fromHz, endS);
  }

  /** Fades out and lets the audio system go. Safe to call twice. */
  stop(): void {
    const { context, gain, oscillator } = this;
    this.context = null;
    this.gain = null;
    this.oscillator = null;
    if (context === null || gain === null || oscillator === null) return;
    gain.gain.cancelScheduledValues(context.currentTime);
    gain.gain.setTargetAtTime(0, context.currentTime, FADE_S / 4);
    oscillator.onended = () => void context.close();
    oscillator.stop(context.currentTime + FADE_S);
  }
}
