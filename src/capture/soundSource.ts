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

export type CaptureFailureCode =
  | 'insecure-context'
  | 'refused-by-user'
  | 'refused-by-policy'
  | 'framed'
  | 'permission-withdrawn'
  | 'no-microphone'
  | 'microphone-busy'
  | 'microphone-lost'
  | 'capture-broken'
  | 'uneven-sound'
  | 'pitch-unheard'
  | 'not-audio'
  | 'empty-recording'
  | 'recording-too-long';

/** A failure that the page shows: what is wrong and what to do, in whole sentences. */
export interface CaptureFailure {
  readonly code: CaptureFailureCode;
  readonly message: string;
}

export type CaptureState =
  | { readonly kind: 'idle' }
  | {
      readonly kind: 'starting';
      /** What the start waits for, once it takes long: an unanswered question of the browser. */
      readonly message?: string;
    }
  | {
      readonly kind: 'running';
      readonly sampleRateHz: number;
      readonly settings: CaptureSettings | null;
      /** Which of several channels is used and why; absent where there was nothing to choose. */
      readonly remark?: string;
    }
  | { readonly kind: 'interrupted'; readonly message: string }
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
