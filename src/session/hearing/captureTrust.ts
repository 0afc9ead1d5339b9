import { stepsThatAre } from '../../capture/processingSteps.ts';
import type { ProcessingStep } from '../../capture/processingSteps.ts';
import type { CaptureSettings } from '../../capture/soundSource.ts';
import type { MarkDoubt } from '../../marks/mark.ts';
import type { GainCheckRecord } from '../../notebook/experiment.ts';
import type { ListeningWarning } from './listeningTypes.ts';

/**
 * How far levels of this capture can be trusted. `unproven`: nobody knows, a gain check will tell. `doubtful`: something
 * speaks against them, and what is marked carries the doubt. Nothing is withheld for it: a gain that moves changes a
 * level, and leaves the phase, which tells the place, alone.
 */
export interface CaptureTrust {
  readonly kind: 'trusted' | 'unproven' | 'doubtful';
  readonly reason: TrustReason;
  /** Whether a gain check can settle it. */
  readonly gainCheckHelps: boolean;
}

/** What the trust rests on. */
export type TrustReason =
  | { readonly code: 'nothing-processes' | 'check-passed' | 'processing-off' }
  | { readonly code: 'processing-on' | 'processing-unsaid'; readonly steps: readonly ProcessingStep[] }
  | { readonly code: 'check-failed' | 'sounds-processed' };

/**
 * Judges a microphone's capture. A band that ends at 4, 8 or 16 kHz says nothing against the level at a fork's pitch,
 * since talk and rooms end there, too; a room that grows quieter when the fork is loud does, until a gain check is passed.
 * @param settings  as read back from the track; null where nothing can process the sound (practice, recording)
 * @param warnings  what listening has warned of in this run
 * @param check  the experiment's last gain check; it counts for the device it was made with
 */
export function captureTrust(
  settings: CaptureSettings | null,
  warnings: readonly ListeningWarning[],
  check: GainCheckRecord | null,
): CaptureTrust {
  if (settings === null) return trust('trusted', { code: 'nothing-processes' }, false);
  const on = stepsThatAre('on', settings);
  if (on.length > 0) return trust('doubtful', { code: 'processing-on', steps: on }, false);
  const own = check !== null && check.device === settings.deviceLabel ? check : null;
  if (own?.verdict === 'rewritten') return trust('doubtful', { code: 'check-failed' }, true);
  if (own?.verdict === 'steady') return trust('trusted', { code: 'check-passed' }, true);
  if (warnings.some(({ code }) => code === 'gain-pumping')) {
    return trust('doubtful', { code: 'sounds-processed' }, true);
  }
  const unknown = stepsThatAre('unknown', settings);
  if (unknown.length === 0) return trust('trusted', { code: 'processing-off' }, true);
  return trust('unproven', { code: 'processing-unsaid', steps: unknown }, true);
}

/** What a mark must carry that is made under this trust. */
export function doubtsOf({ reason }: CaptureTrust): readonly MarkDoubt[] {
  switch (reason.code) {
    case 'processing-on':
    case 'sounds-processed':
      return [reason.code];
    case 'check-failed':
      return ['gain-check-failed'];
    default:
      return [];
  }
}

function trust(kind: CaptureTrust['kind'], reason: TrustReason, gainCheckHelps: boolean): CaptureTrust {
  return { kind, reason, gainCheckHelps };
}
