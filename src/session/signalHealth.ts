import type { ListeningWarning } from './listeningTypes.ts';

const CLIP = 0.999;
/** Runs of this many samples at the limit are clipping; a single peak may just touch it. */
const RUN = 3;

/** Counts what is wrong with the samples themselves: clipping and silence. */
export class SignalHealth {
  #run = 0;
  #clipped = 0;
  #frames = 0;
  #largest = 0;

  push(samples: Float32Array): void {
    for (const sample of samples) {
      const size = Math.abs(sample);
      if (size > this.#largest) this.#largest = size;
      if (size >= CLIP) {
        this.#run += 1;
        if (this.#run === RUN) this.#clipped += 1;
      } else this.#run = 0;
    }
    this.#frames += samples.length;
  }

  get largest(): number {
    return this.#largest;
  }

  warnings(): ListeningWarning[] {
    if (this.#frames > 0 && this.#largest === 0) {
      return [
        {
          code: 'silent',
          message: 'The sound is pure silence: check that the right microphone is chosen and not muted.',
          timeS: null,
        },
      ];
    }
    if (this.#clipped > 0) {
      return [
        {
          code: 'clipping',
          message: `The input was too loud ${this.#clipped} times: move the microphone away or turn its gain down.`,
          timeS: null,
        },
      ];
    }
    return [];
  }
}
