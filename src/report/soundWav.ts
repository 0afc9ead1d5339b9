import { encodeWav } from '../capture/wav.ts';
import type { Experiment } from '../notebook/experiment.ts';
import type { KeptSound } from '../notebook/keptSound.ts';
import { centreCueLabel, cueLabel } from '../words/cueLabel.ts';

/**
 * A kept sound as a WAV file of 16 bits, its marks as cue points with labels.
 * @param samples  16-bit, mono, full scale 32768
 */
export function soundWav(
  experiment: Experiment,
  sound: KeptSound,
  samples: Int16Array,
): Uint8Array<ArrayBuffer> {
  const cues = sound.marks.flatMap(({ markId, timeS }) => {
    const mark = experiment.marks.find((candidate) => candidate.id === markId);
    if (mark === undefined) return [];
    const frameAt = (atS: number): number =>
      Math.max(0, Math.min(samples.length, Math.round(atS * sound.sampleRateHz)));
    const peak = { frame: frameAt(timeS), label: cueLabel(experiment, mark) };
    const { evidence } = mark;
    const centreLabel = centreCueLabel(experiment, mark);
    if (centreLabel === null || evidence?.centre === null || evidence?.centre === undefined) return [peak];
    // Both times of the evidence are on one axis; the sound may have another.
    const frame = frameAt(timeS + evidence.centre.timeS - evidence.timeS);
    return [peak, { frame, label: centreLabel }];
  });
  return encodeWav([Float32Array.from(samples, (sample) => sample / 32_768)], sound.sampleRateHz, cues);
}
