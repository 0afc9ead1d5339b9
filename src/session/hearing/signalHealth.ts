import { SignalWatch } from '../../capture/signal/signalWatch.ts';
import type { SignalFindings } from '../../capture/signal/signalWatch.ts';
import type { ListeningWarning } from './listeningTypes.ts';
import { newWarning } from './newWarning.ts';

/** What the samples say of the way they came, in words: clipping, silence, gaps, holes in the band, hum, offset. */
export class SignalHealth {
  private readonly watch: SignalWatch;
  private words: readonly ListeningWarning[] = [];

  /** @param sampleRateHz  8000..384000 */
  constructor(sampleRateHz: number) {
    this.watch = new SignalWatch(sampleRateHz);
  }

  push(samples: Float32Array): void {
    this.watch.push(samples);
  }

  /** Notes that sound was lost here: no check spans it. */
  interrupt(): void {
    this.watch.interrupt();
  }

  /** Largest sample's size so far, 1 = full scale. */
  get largest(): number {
    return this.watch.largest;
  }

  /** Brings the warnings up to the last sample. */
  finish(): void {
    this.watch.finish();
  }

  /** As of the last half second. */
  warnings(): readonly ListeningWarning[] {
    if (this.watch.isNew) this.words = signalWarnings(this.watch.findings, this.watch.frames);
    return this.words;
  }
}

/** Words for what was found. @param frames  samples heard so far */
export function signalWarnings(found: SignalFindings, frames: number): readonly ListeningWarning[] {
  if (frames === 0) return [];
  if (found.largest === 0) {
    return [
      newWarning(
        'silent',
        'The sound is pure silence: the microphone is muted, or it is another one than meant.',
      ),
    ];
  }
  return WARNINGS.map((warningOf) => warningOf(found)).filter((warning) => warning !== null);
}

function loudnessWarning({ clips, flats, largest }: SignalFindings): ListeningWarning | null {
  if (clips > 0) {
    return newWarning(
      'clipping',
      `The input was too loud ${times(clips)}: move the microphone away or turn its gain down.`,
    );
  }
  if (flats === 0) return null;
  return newWarning(
    'clipping',
    `The crests were cut off at ${Math.round(100 * largest)} % of full scale ${times(flats)}: what stands before the recorder is overdriven. Move the microphone away or turn its gain down.`,
  );
}

function gapsWarning({ dropouts, firstDropoutS }: SignalFindings): ListeningWarning | null {
  if (dropouts === 0) return null;
  const where = firstDropoutS === null ? '' : `, first at ${firstDropoutS.toFixed(1)} s`;
  return newWarning(
    'dropouts',
    `The sound broke off and came back ${times(dropouts)}${where}: levels there are too low. Close other programs, or use a microphone with a cable.`,
    firstDropoutS,
  );
}

function bandWarning({ edge, floorFallDb }: SignalFindings): ListeningWarning | null {
  if (edge !== null && edge.edgeHz < 16_000) {
    return newWarning(
      'narrow-band',
      `There is nothing above ${edge.edgeHz / 1000} kHz: so sounds a headset in its telephone mode, or a telephone’s own recording. Such a line changes the level. Choose the device’s own microphone and take the headset off.`,
    );
  }
  if (edge !== null) {
    return newWarning(
      'high-band-missing',
      'There is nothing above 16 kHz: so sounds a suppression of noise or a strong compression of the file. Of a microphone do the gain check before you trust a level; record as WAV where you can.',
    );
  }
  if (floorFallDb === null) return null;
  return newWarning(
    'floor-fell',
    `The quiet between sounds fell ${Math.round(floorFallDb)} dB below what the room was at first: either the room became quiet, or a suppression of noise has set in. Of a microphone do the gain check before you trust a level.`,
  );
}

function offsetWarning({ offset }: SignalFindings): ListeningWarning | null {
  if (offset === null) return null;
  return newWarning(
    'offset',
    `The sound lies ${(100 * Math.abs(offset)).toFixed(1)} % of full scale beside zero: a fault of the sound card or its plug. Levels at the fork’s pitch stand; try another input if the sound clips.`,
  );
}

function humWarning({ hum }: SignalFindings): ListeningWarning | null {
  if (hum === null) return null;
  return newWarning(
    'hum',
    `The mains hum at ${hum.mainsHz} Hz is loud (${Math.round(hum.levelDb)} dB): unplug the charger, or move away from power supplies and lamps.`,
  );
}

const WARNINGS = [loudnessWarning, gapsWarning, bandWarning, offsetWarning, humWarning] as const;

function times(count: number): string {
  return count === 1 ? 'once' : `${count} times`;
}
