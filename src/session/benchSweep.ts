import { airFromReadings } from '../air/airState.ts';
import type { CaptureState, SampleBlock, SoundListener, SoundSource } from '../capture/soundSource.ts';
import { sweepDurationS } from '../capture/sweepPlan.ts';
import type { SweepPlan } from '../capture/sweepPlan.ts';
import type { Experiment } from '../notebook/experiment.ts';
import { sweepResonances } from '../resonance/sweep/sweepResonances.ts';
import type { SweepResonances } from '../resonance/sweep/sweepResonances.ts';
import { sweepSpeed } from '../solver/sweepSpeed.ts';
import type { SweepSpeed, SweptColumn } from '../solver/sweepSpeed.ts';
import { SweepTrack } from '../tone/sweepTrack.ts';

/** Sound that is heard beyond the sweep's own duration: it swells first, and the microphone opens late, s. */
const EXTRA_S = 3;

/** How far a sweep is, and what it found. */
export type SweepState =
  | { readonly kind: 'idle' }
  | { readonly kind: 'running'; readonly share: number }
  | { readonly kind: 'failed'; readonly message: string }
  | { readonly kind: 'done'; readonly found: SweepResonances };

/** One sweep at a column of fixed length, from its sound to its resonances. */
export class BenchSweep implements SoundListener {
  state: SweepState = { kind: 'idle' };
  private track: SweepTrack | null = null;
  private sampleRateHz = 0;

  /**
   * @param source  is stopped at the sweep's end, by `cancel` and on a failure
   * @param onChange  called after every change of `state`
   */
  constructor(
    private readonly source: SoundSource,
    private readonly plan: SweepPlan,
    private readonly onChange: () => void,
  ) {}

  async start(): Promise<void> {
    this.set({ kind: 'running', share: 0 });
    await this.source.start(this);
  }

  /** Ends the sweep without a result. */
  cancel(): void {
    if (this.state.kind !== 'running') return;
    this.set({ kind: 'idle' });
    this.source.stop();
  }

  onState(state: CaptureState): void {
    if (this.state.kind !== 'running') return;
    if (state.kind === 'running' && this.track === null) {
      this.sampleRateHz = state.sampleRateHz;
      this.track = new SweepTrack(state.sampleRateHz, this.plan.fromHz, this.plan.toHz);
    }
    if (state.kind === 'failed') this.set({ kind: 'failed', message: state.failure.message });
    if (state.kind === 'interrupted') {
      this.set({ kind: 'failed', message: state.message });
      this.source.stop();
    }
  }

  onBlock(block: SampleBlock): void {
    if (this.state.kind !== 'running' || this.track === null) return;
    this.track.push(block.samples);
    const heardS = (block.startFrame + block.samples.length) / this.sampleRateHz;
    const neededS = sweepDurationS(this.plan) + EXTRA_S;
    if (heardS < neededS) return this.set({ kind: 'running', share: heardS / neededS });
    const found = sweepResonances(this.track.frames, this.plan.rateHzPerS);
    this.set({ kind: 'done', found });
    this.source.stop();
  }

  private set(state: SweepState): void {
    this.state = state;
    this.onChange();
  }
}

/** The column of this experiment, held at a length. @param lengthM  rule reading, zero offset not yet taken off */
export function sweptColumn(experiment: Experiment, lengthM: number): SweptColumn {
  const { present, tube, rule, places } = experiment;
  const place = places.find((one) => one.id === present.placeId);
  const temperatureC = place?.temperatureC ?? null;
  return {
    ends: present.ends,
    lengthM: lengthM - rule.zeroOffsetM,
    lengthStandardUncertaintyM: rule.readingStandardUncertaintyM,
    radiusM: tube.diameterM === null ? null : tube.diameterM / 2,
    air: place === undefined || temperatureC === null ? null : airFromReadings({ ...place, temperatureC }),
  };
}

/** Speed of sound from what a sweep found; null where nothing fits the column. */
export function speedFromSweep(
  experiment: Experiment,
  lengthM: number,
  found: SweepResonances,
): SweepSpeed | null {
  const column = sweptColumn(experiment, lengthM);
  return column.lengthM > 0 ? sweepSpeed(column, found.resonances) : null;
}
