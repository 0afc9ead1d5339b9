import { stepsThatAre } from '../../capture/processingSteps.ts';
import type { ProcessingStep } from '../../capture/processingSteps.ts';
import type { CaptureSettings } from '../../capture/soundSource.ts';
import type { GainCheckRecord } from '../../notebook/experiment.ts';
import type { ListeningWarning } from './listeningTypes.ts';

/**
 * Whether levels of this capture may become results. `trusted`: yes. `unproven`: nobody knows, a gain check will tell.
 * `blocked`: no flag is kept until the way out was taken.
 */
export interface CaptureTrust {
  readonly kind: 'trusted' | 'unproven' | 'blocked';
  readonly reason: TrustReason;
  /** Whether a gain check can settle it. */
  readonly gainCheckHelps: boolean;
}

/** What is withheld of a capture that is blocked. */
export type Withheld = 'flags' | 'sweep';

/** What the trust rests on. */
export type TrustReason =
  | { readonly code: 'nothing-processes' | 'check-passed' | 'processing-off' }
  | {
      readonly code: 'processing-on';
      readonly steps: readonly ProcessingStep[];
      readonly withheld: Withheld;
    }
  | { readonly code: 'check-failed' | 'sounds-processed'; readonly withheld: Withheld }
  | { readonly code: 'processing-unsaid'; readonly steps: readonly ProcessingStep[] };

/** What the samples may say that only a processed sound says; a check that was passed outweighs it. */
const SUSPICIONS: readonly ListeningWarning['code'][] = ['high-band-missing', 'narrow-band', 'gain-pumping'];

/**
 * Judges a microphone's capture.
 * @param settings  as read back from the track; null where nothing can process the sound (practice, recording)
 * @param warnings  what listening has warned of in this run
 * @param check  the experiment's last gain check; it counts for the device it was made with
 * @param withheld  what the level would become
 */
export function captureTrust(
  settings: CaptureSettings | null,
  warnings: readonly ListeningWarning[],
  check: GainCheckRecord | null,
  withheld: Withheld = 'flags',
): CaptureTrust {
  if (settings === null) return trust('trusted', { code: 'nothing-processes' }, false);
  const on = stepsThatAre('on', settings);
  if (on.length > 0) return trust('blocked', { code: 'processing-on', steps: on, withheld }, false);
  const own = check !== null && check.device === settings.deviceLabel ? check : null;
  if (own?.verdict === 'rewritten') return trust('blocked', { code: 'check-failed', withheld }, true);
  if (own?.verdict === 'steady') return trust('trusted', { code: 'check-passed' }, true);
  if (warnings.some(({ code }) => SUSPICIONS.includes(code))) {
    return trust('blocked', { code: 'sounds-processed', withheld }, true);
  }
  const unknown = stepsThatAre('unknown', settings);
  if (unknown.length === 0) return trust('trusted', { code: 'processing-off' }, true);
  return trust('unproven', { code: 'processing-unsaid', steps: unknown }, true);
}

function trust(kind: CaptureTrust['kind'], reason: TrustReason, gainCheckHelps: boolean): CaptureTrust {
  return { kind, reason, gainCheckHelps };
}
