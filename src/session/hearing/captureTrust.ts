import { stepsThatAre } from '../../capture/processingSteps.ts';
import type { CaptureSettings } from '../../capture/soundSource.ts';
import type { GainCheckRecord } from '../../notebook/experiment.ts';
import type { ListeningWarning } from './listeningTypes.ts';

/**
 * Whether levels of this capture may become results. `trusted`: yes. `unproven`: nobody knows, a gain check will tell.
 * `blocked`: no flag is kept until the way out was taken.
 */
export interface CaptureTrust {
  readonly kind: 'trusted' | 'unproven' | 'blocked';
  /** One line for the person. */
  readonly message: string;
  /** Whether a gain check can settle it. */
  readonly gainCheckHelps: boolean;
}

/** What is withheld of a capture that is blocked, and what comes of a gain check that is passed. */
export type Withheld = 'flags' | 'sweep';

const WITHHELD: Readonly<Record<Withheld, { readonly nothing: string; readonly after: string }>> = {
  flags: { nothing: 'nothing is flagged', after: 'if it is passed, flags go on' },
  sweep: { nothing: 'the sweep gives no result', after: 'if it is passed, sweep again' },
};

/** What the samples may say that only a processed sound says; a check that was passed outweighs it. */
const SUSPICIONS: readonly ListeningWarning['code'][] = ['high-band-missing', 'narrow-band', 'gain-pumping'];

/**
 * Judges a microphone's capture.
 * @param settings  as read back from the track; null where nothing can process the sound (practice, recording)
 * @param warnings  what listening has warned of in this run
 * @param check  the experiment's last gain check; it counts for the device it was made with
 * @param withheld  what the level would become, for the words
 */
export function captureTrust(
  settings: CaptureSettings | null,
  warnings: readonly ListeningWarning[],
  check: GainCheckRecord | null,
  withheld: Withheld = 'flags',
): CaptureTrust {
  const { nothing, after } = WITHHELD[withheld];
  if (settings === null) return trust('trusted', 'Nothing processes this source.', false);
  const on = stepsThatAre('on', settings);
  if (on.length > 0) {
    return trust(
      'blocked',
      `This browser keeps ${on.join(' and ')} on and rewrites the level, so ${nothing}. Choose another microphone or another browser, switch voice modes off in the system’s sound settings, or record with any recorder and open the file here.`,
      false,
    );
  }
  const own = check !== null && check.device === settings.deviceLabel ? check : null;
  if (own?.verdict === 'rewritten') {
    return trust(
      'blocked',
      `The gain check found that something rewrites the level, so ${nothing}. Switch voice modes off in the system’s sound settings or choose another microphone, then do the check again.`,
      true,
    );
  }
  if (own?.verdict === 'steady')
    return trust('trusted', 'The gain check was passed with this microphone.', true);
  const suspicion = warnings.find(({ code }) => SUSPICIONS.includes(code));
  if (suspicion !== undefined) {
    return trust(
      'blocked',
      `The sound looks processed though the browser says it is not, so ${nothing}. Do the gain check: ${after}.`,
      true,
    );
  }
  const unknown = stepsThatAre('unknown', settings);
  if (unknown.length === 0) return trust('trusted', 'The browser’s processing is off.', true);
  return trust(
    'unproven',
    `This browser doesn’t say whether ${unknown.join(' and ')} is off. Do the gain check before you trust a level.`,
    true,
  );
}

function trust(kind: CaptureTrust['kind'], message: string, gainCheckHelps: boolean): CaptureTrust {
  return { kind, message, gainCheckHelps };
}
