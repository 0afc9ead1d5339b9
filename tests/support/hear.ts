import { Listening } from '../../src/session/hearing/listening.ts';
import type {
  LevelPoint,
  ListeningReport,
  ListeningWarning,
  Resonance,
  Sounding,
} from '../../src/session/hearing/listeningTypes.ts';
import type { ToneSeries } from '../../src/tone/toneSeries.ts';
import { ToneStream } from '../../src/tone/toneStream.ts';

/** The tone stage's output for samples that are at hand. */
export function toneSeriesOf(samples: Float32Array, sampleRateHz: number, frequencyHz: number): ToneSeries {
  const stream = new ToneStream(sampleRateHz, frequencyHz);
  stream.push(samples);
  stream.finish();
  return stream.series;
}

/** All that a listening tells. */
export interface Heard {
  readonly points: readonly LevelPoint[];
  readonly flagged: readonly Resonance[];
  readonly warned: readonly ListeningWarning[];
  /** As told live, each as of its last telling, in order. */
  readonly soundings: readonly Sounding[];
  readonly report: ListeningReport;
}

/** Lets a listening hear samples in blocks of a size, as a source would give them. */
export function hear(samples: Float32Array, sampleRateHz: number, forkHz: number, blockSize = 4096): Heard {
  const listening = new Listening({ sampleRateHz, fork: { nominalHz: forkHz, toleranceHz: 2 } });
  const points: LevelPoint[] = [];
  const warned: ListeningWarning[] = [];
  const soundings = new Map<number, Sounding>();
  for (let start = 0; start < samples.length; start += blockSize) {
    const update = listening.push({
      samples: samples.subarray(start, start + blockSize),
      startFrame: start,
      discontinuity: false,
    });
    points.push(...update.points);
    warned.push(...update.warnings);
    for (const sounding of update.soundings) soundings.set(sounding.index, sounding);
  }
  const update = listening.finish();
  points.push(...update.points);
  for (const sounding of update.soundings) soundings.set(sounding.index, sounding);
  return {
    points,
    warned,
    soundings: [...soundings.values()],
    flagged: [...listening.resonances],
    report: listening.offlineReport(),
  };
}
