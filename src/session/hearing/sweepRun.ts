import { airFromReadings } from '../../air/airState.ts';
import { stepsThatAre } from '../../capture/processingSteps.ts';
import type {
  CaptureFailure,
  CaptureHold,
  CaptureSettings,
  CaptureState,
  SampleBlock,
  SoundListener,
  SoundSource,
} from '../../capture/soundSource.ts';
import { sweepDurationS } from '../../capture/sweepPlan.ts';
import type { SweepPlan } from '../../capture/sweepPlan.ts';
import { columnM } from '../../marks/columnOfMark.ts';
import { USUAL_LENGTH_STANDARD_UNCERTAINTY_M } from '../../marks/usualUncertainties.ts';
import type { Experiment, GainCheckRecord } from '../../notebook/experiment.ts';
import { sweepResonances } from '../../resonance/sweep/sweepResonances.ts';
import type { SweepResonances } from '../../resonance/sweep/sweepResonances.ts';
import { sweepSpeed } from '../../solver/sweepSpeed.ts';
import type { SweepSpeed, SweptColumn } from '../../solver/sweepSpeed.ts';
import { SweepTrack } from '../../tone/sweepTrack.ts';
import { captureTrust } from './captureTrust.ts';
import type { CaptureTrust } from './captureTrust.ts';
import type { ListeningWarning } from './listeningTypes.ts';
import { SignalHealth } from './signalHealth.ts';
import { whyNotHeard } from './whyNotHeard.ts';

/** Sound that is heard beyond the sweep's own duration: it swells first, and the microphone opens late, s. */
const EXTRA_S = 3;

/** What a sweep found, and how far its levels can be trusted. */
export interface SweepFindings {
  readonly found: SweepResonances;
  readonly trust: CaptureTrust;
  /** What was wrong with the levels on their way here. */
  readonly warnings: readonly ListeningWarning[];
}

/** How far a sweep is, and what it found. */
export type SweepState =
  | { readonly kind: 'idle' }
  | { readonly kind: 'running'; readonly share: number }
  | { readonly kind: 'failed'; readonly failure: SweepFailure }
  | ({ readonly kind: 'done' } & SweepFindings);

/** Why a sweep ended without a result: capture failed, or was held up. */
export type SweepFailure = CaptureFailure | { readonly code: 'held-up'; readonly hold: CaptureHold };

/** Faults of the sound that make single levels wrong; the others say something of the capture as a whole. */
const OF_LEVELS: readonly ListeningWarning['code'][] = ['silent', 'clipping', 'dropouts'];

/** One sweep at a column of fixed length, from its sound to its resonances. */
export class SweepRun implements SoundListener {
  state: SweepState = { kind: 'idle' };
  private track: SweepTrack | null = null;
  private health: SignalHealth | null = null;
  private sampleRateHz = 0;
  /** As read back; null where nothing can process the sound. What was once on counts to the end. */
  private settings: CaptureSettings | null = null;

  /**
   * @param source  is stopped at the sweep's end, by `cancel` and on a failure
   * @param gainCheck  the experiment's last one; null where none was made
   * @param onChange  called after every change of `state`
   */
  constructor(
    private readonly source: SoundSource,
    private readonly plan: SweepPlan,
    private readonly gainCheck: GainCheckRecord | null,
    private readonly onChange: () => void,
  ) {}

  async start(): Promise<void> {
    this.set({ kind: 'running', share: 0 });
    await this.source.start(this);
  }

  /** What was heard until now; null before anything was. */
  get soFar(): SweepResonances | null {
    const { track } = this;
    return track === null ? null : sweepResonances(track.frames, this.plan.rateHzPerS, track.gaps);
  }

  /** Ends the sweep without a result. */
  cancel(): void {
    if (this.state.kind !== 'running') return;
    this.set({ kind: 'idle' });
    this.source.stop();
  }

  onState(state: CaptureState): void {
    if (this.state.kind !== 'running') return;
    if (state.kind === 'running') {
      const wasOn = this.settings !== null && stepsThatAre('on', this.settings).length > 0;
      if (!wasOn) this.settings = state.settings;
      if (this.track === null) {
        const unfit = whyNotHeard(state.sampleRateHz, this.plan.toHz);
        if (unfit !== null) {
          this.set({ kind: 'failed', failure: { code: 'pitch-unheard', why: unfit } });
          this.source.stop();
          return;
        }
        this.sampleRateHz = state.sampleRateHz;
        this.track = new SweepTrack(state.sampleRateHz, this.plan.fromHz, this.plan.toHz);
        this.health = new SignalHealth(state.sampleRateHz);
      }
    }
    if (state.kind === 'failed') this.set({ kind: 'failed', failure: state.failure });
    if (state.kind === 'interrupted') {
      this.set({ kind: 'failed', failure: { code: 'held-up', hold: state.hold } });
      this.source.stop();
    }
  }

  onBlock(block: SampleBlock): void {
    const { track, health } = this;
    if (this.state.kind !== 'running' || track === null || health === null) return;
    if (block.discontinuity) {
      track.interrupt(block.startFrame);
      health.interrupt();
    }
    track.push(block.samples);
    health.push(block.samples);
    const heardS = (block.startFrame + block.samples.length) / this.sampleRateHz;
    const neededS = sweepDurationS(this.plan) + EXTRA_S;
    if (heardS < neededS) return this.set({ kind: 'running', share: heardS / neededS });
    health.finish();
    const warnings = health.warnings();
    this.set({
      kind: 'done',
      found: sweepResonances(track.frames, this.plan.rateHzPerS, track.gaps),
      trust: captureTrust(this.settings, warnings, this.gainCheck),
      warnings: warnings.filter(({ code }) => OF_LEVELS.includes(code)),
    });
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
    lengthM: columnM(lengthM, rule.zeroOffsetM),
    // A column that stays is read and not searched for.
    lengthStandardUncertaintyM: rule.readingStandardUncertaintyM ?? USUAL_LENGTH_STANDARD_UNCERTAINTY_M,
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
