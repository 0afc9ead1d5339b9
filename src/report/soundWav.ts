import { encodeWav } from '../capture/wav.ts';
import type { Experiment } from '../notebook/experiment.ts';
import type { KeptSound } from '../notebook/keptSound.ts';
import { cueLabel } from '../words/cueLabel.ts';

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
    const frame = Math.max(0, Math.min(samples.length, Math.round(timeS * sound.sampleRateHz)));
    return mark === undefined ? [] : [{ frame, label: cueLabel(experiment, mark) }];
  });
  return encodeWav([Float32Array.from(samples, (sample) => sample / 32_768)], sound.sampleRateHz, cues);
}
