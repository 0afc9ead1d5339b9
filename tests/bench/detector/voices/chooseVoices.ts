import { recordedVoices } from './recordedVoices.ts';
import { synthesisedVoices } from './synthesisedVoices.ts';
import { GENERATED_VOICES, VOICE_KINDS, type VoiceKind, type Voices } from './voices.ts';

/** The option of every benchmark that makes people talk, for `parseArgs`. */
export const VOICES_OPTION = { type: 'string', default: 'generated' } as const;

/**
 * The voices that a benchmark was told to use.
 * @param name  what stands after --voices: generated, recorded or synthesised
 * @throws Error for another word, and where these voices aren't installed
 */
export function chooseVoices(name: string): Voices {
  const kind = VOICE_KINDS.find((one): one is VoiceKind => one === name);
  if (kind === undefined) throw new Error(`--voices: ${VOICE_KINDS.join(', ')}; got "${name}".`);
  switch (kind) {
    case 'generated':
      return GENERATED_VOICES;
    case 'recorded':
      return recordedVoices();
    case 'synthesised':
      return synthesisedVoices();
  }
}

/** The same for a command: a word that doesn't do ends it with one line and status 2. */
export function voicesOrEnd(name: string): Voices {
  try {
    return chooseVoices(name);
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exit(2);
  }
}
