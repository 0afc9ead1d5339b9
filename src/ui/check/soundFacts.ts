import type { CaptureState } from '../../capture/soundSource.ts';
import type { RecentLevels } from '../../session/hearing/recentLevels.ts';
import type { SoundFact } from '../../words/page/soundCheck.ts';

/** One line of the check of input and fork; `isGood` is null where it is neither good nor bad. */
export type JudgedFact = SoundFact & { readonly isGood: boolean | null };

/** Loudest whole sound below which a fork will hardly be heard, dB (0 dB: a sine of amplitude 1). A judgement. */
const FAINT_DB = -75;

/** What the capture and the last minute of sound say about the room and the microphone. */
export function soundFacts(capture: CaptureState, trace: RecentLevels): readonly JudgedFact[] {
  return [
    processingFact(capture),
    inputFact(capture, trace),
    { kind: 'room', roomDb: trace.latest?.roomDb ?? null, isGood: null },
  ];
}

function processingFact(capture: CaptureState): JudgedFact {
  if (capture.kind !== 'running') return { kind: 'raw', state: 'not listening', isGood: null };
  const { settings } = capture;
  if (settings === null) return { kind: 'raw', state: 'nothing processes', isGood: true };
  const flags = [settings.autoGainControl, settings.noiseSuppression, settings.echoCancellation];
  if (flags.includes('on')) return { kind: 'raw', state: 'level changed', isGood: false };
  return flags.includes('unknown')
    ? { kind: 'raw', state: 'not said', isGood: null }
    : { kind: 'raw', state: 'off', isGood: true };
}

function inputFact(capture: CaptureState, trace: RecentLevels): JudgedFact {
  if (capture.kind === 'running' && capture.isSilent === true) {
    return { kind: 'input', state: 'silent', isGood: false };
  }
  const warning = trace.warnings.find(({ code }) => ['clipping', 'too-faint'].includes(code));
  if (warning !== undefined) return { kind: 'input', state: 'warned', warning, isGood: false };
  const loudestDb = trace.points.reduce((high, point) => Math.max(high, point.broadbandDb), -Infinity);
  if (!Number.isFinite(loudestDb)) return { kind: 'input', state: 'nothing heard', isGood: null };
  const isFaint = loudestDb < FAINT_DB;
  return { kind: 'input', state: 'heard', loudestDb, isFaint, isGood: !isFaint };
}
