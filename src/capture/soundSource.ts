import type { ChannelReason } from './channelJudge.ts';
import type { RecordingFault } from './recordingFault.ts';

/** A stretch of mono sound with its place on the source's own sample-counted time axis. */
export interface SampleBlock {
  /** Any length >= 1, mono, nominal range -1..1; the receiver may keep it. */
  readonly samples: Float32Array;
  /** Frames from the source's start to the first sample. Lost frames are counted, so time never drifts. */
  readonly startFrame: number;
  /** True when frames between the block before and this one were lost: whatever spans the gap is void. */
  readonly discontinuity: boolean;
}

/** What the browser says of one processing step: `unknown` where it says nothing. */
export type ProcessingFlag = 'off' | 'on' | 'unknown';

/** What was read back from the running track, not what was asked for. */
export interface CaptureSettings {
  readonly deviceLabel: string | null;
  readonly channelCount: number | null;
  readonly echoCancellation: ProcessingFlag;
  readonly noiseSuppression: ProcessingFlag;
  readonly autoGainControl: ProcessingFlag;
}

/** Why a pitch can't be heard: the sample rate lies outside of what is heard at all, or doesn't carry the pitch. */
export type UnheardPitch =
  | {
      readonly unheard: 'sample-rate';
      readonly sampleRateHz: number;
      /** The sample rates that are heard. */
      readonly lowestHz: number;
      readonly highestHz: number;
    }
  | {
      readonly unheard: 'pitch';
      readonly pitchHz: number;
      readonly sampleRateHz: number;
      /** The pitches that this sample rate carries. */
      readonly lowestHz: number;
      readonly highestHz: number;
    };

/** Why nothing is heard, or no more. */
export type CaptureFailure =
  | {
      readonly code:
        | 'insecure-context'
        | 'framed'
        | 'permission-withdrawn'
        | 'microphone-busy'
        | 'microphone-lost'
        | 'uneven-sound';
    }
  /** `closed`: the question was closed without an answer. */
  | { readonly code: 'refused-by-user'; readonly how: 'refused' | 'closed' }
  /** The policy of the page or the school, or the system's own privacy settings. */
  | { readonly code: 'refused-by-policy'; readonly by: 'policy' | 'system' }
  /** `none-given`: the browser gives pages none at all; `not-there`: the chosen one is gone. */
  | { readonly code: 'no-microphone'; readonly why: 'none-given' | 'none-found' | 'not-there' }
  /** `said`: what the browser or the engine says of it; empty where it says nothing. */
  | {
      readonly code: 'capture-broken';
      readonly what: 'microphone' | 'recording' | 'listening';
      readonly said: string;
    }
  | { readonly code: 'pitch-unheard'; readonly why: UnheardPitch }
  | { readonly code: RecordingFault['code']; readonly why: RecordingFault };

/** What holds up a microphone: a mute, a pause of the browser, or no sound for two seconds. */
export type CaptureHold = 'muted' | 'suspended' | 'frozen';

export type CaptureState =
  | { readonly kind: 'idle' }
  | {
      readonly kind: 'starting';
      /** What the start waits for, once it takes long: an unanswered question of the browser. */
      readonly waitsFor?: 'permission';
    }
  | {
      readonly kind: 'running';
      readonly sampleRateHz: number;
      readonly settings: CaptureSettings | null;
      /** Which of several channels is used and why; absent where there was nothing to choose. */
      readonly channel?: ChannelReason;
      /** Nothing but zeros has come for a while; absent where there is sound. */
      readonly isSilent?: true;
    }
  | { readonly kind: 'interrupted'; readonly hold: CaptureHold }
  | { readonly kind: 'ended' }
  | { readonly kind: 'failed'; readonly failure: CaptureFailure };

export interface SoundListener {
  /** Called in order; the first call comes after a `running` state. */
  onBlock(block: SampleBlock): void;
  onState(state: CaptureState): void;
}

/** A marked moment of a recording. */
export interface SoundCue {
  /** From the recording's start, s. */
  readonly timeS: number;
  /** What the file says of it. */
  readonly label: string;
  /** The mark of the open experiment that it belongs to, where that is known. */
  readonly markId: string | null;
}

/** Where sound comes from: the microphone, a recording or the practice column. */
export interface SoundSource {
  readonly kind: 'microphone' | 'recording' | 'practice';
  /** Moments that a recording has marked, known once it runs; absent where there can be none. */
  readonly cues?: readonly SoundCue[];
  /** Begins to deliver blocks; a failure arrives as a `failed` state, never as a rejected promise. */
  start(listener: SoundListener): Promise<void>;
  /** Ends delivery and releases the device. Safe to call at any time and twice. */
  stop(): void;
}
