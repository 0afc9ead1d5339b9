import type { CaptureState } from '../../capture/soundSource.ts';
import type { Fork } from '../../notebook/experiment.ts';
import type { RecentLevels } from '../../session/hearing/recentLevels.ts';
import type { Sounding } from '../../session/hearing/listeningTypes.ts';
import { listeningWarningWords } from '../../words/listening.ts';
import { fixed, roundPair, signed } from '../../words/numbers.ts';

/** One line of the sound check; `isGood` is null where it is neither good nor bad. */
export interface SoundFact {
  readonly name: string;
  readonly value: string;
  readonly isGood: boolean | null;
}

/** Loudest whole sound below which a fork will hardly be heard, dB (0 dB: a sine of amplitude 1). A judgement. */
const FAINT_DB = -75;

/** What the capture and the last minute of sound say about the room and the microphone. */
export function soundFacts(capture: CaptureState, trace: RecentLevels): readonly SoundFact[] {
  return [processingFact(capture), inputFact(trace), roomFact(trace)];
}

/** The fork's pitch as heard, against its stamp. */
export interface ForkFinding {
  readonly measuredHz: number;
  readonly standardUncertaintyHz: number;
  readonly words: string;
}

/**
 * The best measured pitch of this run against the fork's stamp.
 * @returns null before any sounding gave a pitch
 */
export function forkFinding(soundings: readonly Sounding[], fork: Fork): ForkFinding | null {
  let best: { hz: number; u: number; decayS: number | null } | null = null;
  for (const { frequencyHz, frequencyStandardUncertaintyHz, decayTimeS } of soundings) {
    if (frequencyHz === null || frequencyStandardUncertaintyHz === null) continue;
    if (best === null || frequencyStandardUncertaintyHz < best.u) {
      best = { hz: frequencyHz, u: frequencyStandardUncertaintyHz, decayS: decayTimeS };
    }
  }
  if (best === null) return null;
  const pair = roundPair(best.hz, Math.max(best.u, 1e-3));
  const offHz = best.hz - fork.nominalHz;
  const decay = best.decayS === null ? '' : `; it falls to 1/e in ${fixed(best.decayS, 1)} s`;
  const off = `${signed(offHz, 2)} Hz (${signed((100 * offHz) / fork.nominalHz, 2)} %) from its stamp`;
  return {
    measuredHz: best.hz,
    standardUncertaintyHz: Math.max(best.u, 1e-3),
    words: `${pair.value} ± ${pair.uncertainty} Hz, ${off}${decay}`,
  };
}

function processingFact(capture: CaptureState): SoundFact {
  const name = 'Raw sound';
  if (capture.kind !== 'running') return { name, value: 'begin to listen first', isGood: null };
  const { settings } = capture;
  if (settings === null) return { name, value: 'yes, nothing processes this source', isGood: true };
  const flags = [settings.autoGainControl, settings.noiseSuppression, settings.echoCancellation];
  if (flags.includes('on')) {
    return {
      name,
      value: 'no: the browser changes the level. Try another browser or microphone',
      isGood: false,
    };
  }
  return flags.includes('unknown')
    ? { name, value: 'the browser doesn’t say; do the gain check', isGood: null }
    : { name, value: 'yes, the browser’s processing is off', isGood: true };
}

function inputFact(trace: RecentLevels): SoundFact {
  const name = 'Input';
  const bad = trace.warnings.find((warning) => ['clipping', 'too-faint', 'silent'].includes(warning.code));
  if (bad !== undefined) return { name, value: listeningWarningWords(bad), isGood: false };
  const loudest = trace.points.reduce((high, point) => Math.max(high, point.broadbandDb), -Infinity);
  if (!Number.isFinite(loudest)) return { name, value: 'nothing heard yet', isGood: null };
  return {
    name,
    value: `up to ${fixed(loudest, 0)} dB (0 dB: a sine of full scale)${loudest < FAINT_DB ? '; very faint' : ''}`,
    isGood: loudest >= FAINT_DB,
  };
}

function roomFact(trace: RecentLevels): SoundFact {
  const latest = trace.latest;
  return {
    name: 'Room',
    value: latest === null ? 'not heard yet' : `${fixed(latest.roomDb, 0)} dB at the fork’s pitch`,
    isGood: null,
  };
}
