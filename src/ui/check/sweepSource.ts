import { USUAL_AIR } from '../../air/airState.ts';
import { USUAL_RADIUS_M } from '../../air/usualTube.ts';
import { MicrophoneSource } from '../../capture/microphoneSource.ts';
import { PracticeSweep } from '../../capture/practice/practiceSweep.ts';
import { PracticeSource } from '../../capture/practiceSource.ts';
import type { SoundSource } from '../../capture/soundSource.ts';
import type { SweepPlan } from '../../capture/sweepPlan.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import { sweptColumn } from '../../session/hearing/sweepRun.ts';

/**
 * What is heard during a sweep: the microphone, or a simulated column of this experiment's apparatus, which plays
 * nothing aloud.
 * @param lengthM  rule reading at which the column is held
 * @param microphoneId  the chosen one, by the browser's id; null for the system's choice
 */
export function sweepSource(
  isPractice: boolean,
  experiment: Experiment,
  lengthM: number,
  plan: SweepPlan,
  microphoneId: string | null,
): SoundSource {
  if (!isPractice) return new MicrophoneSource({ deviceId: microphoneId });
  const column = sweptColumn(experiment, lengthM);
  const place = experiment.places.find((one) => one.id === experiment.present.placeId);
  const settings = {
    ...plan,
    sampleRateHz: 48_000,
    lengthM: column.lengthM,
    radiusM: column.radiusM ?? USUAL_RADIUS_M,
    ends: column.ends,
    air: {
      temperatureC: place?.temperatureC ?? USUAL_AIR.temperatureC,
      humidityPct: place?.humidityPct ?? null,
      pressurePa: place?.pressurePa ?? null,
    },
  };
  return new PracticeSource(new PracticeSweep(settings, crypto.getRandomValues(new Uint32Array(1))[0] ?? 1));
}
