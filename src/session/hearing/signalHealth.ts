import { SignalWatch } from '../../capture/signal/signalWatch.ts';
import type { SignalFindings } from '../../capture/signal/signalWatch.ts';
import type { ListeningWarning } from './listeningTypes.ts';

/** What the samples say of the way they came: clipping, silence, gaps, holes in the band, hum, offset. */
export class SignalHealth {
  private readonly watch: SignalWatch;
  private found: readonly ListeningWarning[] = [];

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
    if (this.watch.isNew) this.found = signalWarnings(this.watch.findings, this.watch.frames);
    return this.found;
  }
}

/** Warnings of what was found. @param frames  samples heard so far */
function signalWarnings(found: SignalFindings, frames: number): readonly ListeningWarning[] {
  if (frames === 0) return [];
  if (found.largest === 0) return [{ code: 'silent', timeS: null }];
  return WARNINGS.map((warningOf) => warningOf(found)).filter((warning) => warning !== null);
}

function loudnessWarning({ clips, flats, largest }: SignalFindings): ListeningWarning | null {
  if (clips > 0) return { code: 'clipping', times: clips, limit: null, timeS: null };
  return flats === 0 ? null : { code: 'clipping', times: flats, limit: largest, timeS: null };
}

function gapsWarning({ dropouts, firstDropoutS }: SignalFindings): ListeningWarning | null {
  return dropouts === 0 ? null : { code: 'dropouts', times: dropouts, timeS: firstDropoutS };
}

/** An edge from which on only a suppression of noise or a compression is meant, Hz. */
const HIGH_EDGE_HZ = 16_000;

function bandWarning({ edge, floorFallDb }: SignalFindings): ListeningWarning | null {
  if (edge !== null && edge.edgeHz < HIGH_EDGE_HZ) {
    return { code: 'narrow-band', edgeHz: edge.edgeHz, timeS: null };
  }
  if (edge !== null) return { code: 'high-band-missing', timeS: null };
  return floorFallDb === null ? null : { code: 'floor-fell', fallDb: floorFallDb, timeS: null };
}

function offsetWarning({ offset }: SignalFindings): ListeningWarning | null {
  return offset === null ? null : { code: 'offset', offset, timeS: null };
}

function humWarning({ hum }: SignalFindings): ListeningWarning | null {
  return hum === null ? null : { code: 'hum', mainsHz: hum.mainsHz, levelDb: hum.levelDb, timeS: null };
}

const WARNINGS = [loudnessWarning, gapsWarning, bandWarning, offsetWarning, humWarning] as const;
