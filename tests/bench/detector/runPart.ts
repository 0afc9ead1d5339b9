import { candidates, COMPETITORS, type Candidate } from './competitors.ts';
import { listenTo, type Heard } from './listenTo.ts';
import { recordingSet, type SetName } from './recordingSet.ts';
import { simulate, type Truth } from './simulate.ts';
import { chooseVoices } from './voices/chooseVoices.ts';
import type { VoiceKind } from './voices/voices.ts';

/** What all detectors made of one recording. */
export interface RecordingOutcome {
  readonly truth: Truth;
  /** null: the bench wasn't asked. */
  readonly online: Heard | null;
  readonly offline: Heard | null;
  readonly check: Heard | null;
  /** One list for each of COMPETITORS. */
  readonly competitors: readonly (readonly Candidate[])[];
}

/** Which recordings one process works through: every `of`-th, beginning with `part`. */
export interface PartOrder {
  readonly set: SetName;
  readonly each: number | null;
  readonly part: number;
  readonly of: number;
  readonly only: string | null;
  readonly bench: boolean;
  readonly competitors: boolean;
  readonly voices: VoiceKind;
}

/** Makes the recordings of a part one by one and lets every detector listen to them. */
export function runPart(order: PartOrder, tell: (outcome: RecordingOutcome) => void): void {
  const entries = recordingSet(order.set, order.each).filter(
    ({ scenario }) => order.only === null || order.only.split(',').includes(scenario.condition),
  );
  const voices = chooseVoices(order.voices);
  for (const [index, entry] of entries.entries()) {
    if (index % order.of !== order.part) continue;
    const { samples, sampleRateHz, truth } = simulate(entry.scenario, entry.seed, voices);
    const isCheck = truth.checkVerdict !== null;
    const listen = (how: { live?: boolean; check?: boolean }): Heard | null =>
      order.bench ? listenTo(samples, sampleRateHz, truth.nominalHz, how) : null;
    tell({
      truth,
      online: isCheck ? null : listen({ live: true }),
      offline: isCheck ? null : listen({}),
      check: isCheck ? listen({ check: true }) : null,
      competitors:
        order.competitors && !isCheck
          ? COMPETITORS.map((name) => candidates(name, samples, sampleRateHz, truth.nominalHz))
          : [],
    });
  }
}
