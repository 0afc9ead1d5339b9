import type { SampleBlock } from '../../capture/soundSource.ts';
import { checkLength } from '../../resonance/lengthCheck/checkLength.ts';
import type { LengthCheck } from '../../resonance/lengthCheck/checkLength.ts';
import { Listening } from './listening.ts';
import type { ForkPitch } from './listeningTypes.ts';

/** Sound between two looks, s: an answer that changes more often can't be read. */
const LOOK_EVERY_S = 1;

/** The check of one length while it goes on: the column stays, the fork goes away and comes back. */
export class LengthCheckRun {
  /** The answer so far. */
  answer: LengthCheck | null = null;
  private readonly listening: Listening;
  private sinceLookS = 0;

  /** @throws RangeError when the fork's pitch doesn't fit the sample rate */
  constructor(private readonly options: { readonly sampleRateHz: number; readonly fork: ForkPitch }) {
    this.listening = new Listening(options);
  }

  /** Hears a block. @returns whether the answer was looked at anew */
  push(block: SampleBlock): boolean {
    this.listening.push(block);
    this.sinceLookS += block.samples.length / this.options.sampleRateHz;
    if (this.sinceLookS < LOOK_EVERY_S) return false;
    this.sinceLookS = 0;
    this.answer = checkLength(this.listening.series, this.options.fork.toleranceHz);
    return true;
  }
}
