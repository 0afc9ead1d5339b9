/** Why a recording can't be used. */
export type RecordingFault =
  | {
      readonly code: 'not-audio';
      readonly fault:
        | 'no-wav'
        | 'big-endian'
        | 'no-coding'
        | 'header-cut-off'
        /** The browser's decoder finds no sound. */
        | 'not-decoded'
        /** It became shorter while it was read. */
        | 'shorter'
        /** It was moved or changed since it was chosen. */
        | 'unreadable';
    }
  /** `name`: what the coding is called; null where only its number is known. */
  | {
      readonly code: 'not-audio';
      readonly fault: 'coding';
      readonly name: string | null;
      readonly number: number;
    }
  | { readonly code: 'not-audio'; readonly fault: 'channels'; readonly channelCount: number }
  | { readonly code: 'not-audio'; readonly fault: 'sample-rate'; readonly sampleRateHz: number }
  | {
      readonly code: 'not-audio';
      readonly fault: 'bits';
      readonly bits: number;
      readonly bytesPerFrame: number;
      readonly channelCount: number;
    }
  | {
      readonly code: 'empty-recording';
      /** No byte; a WAV that ends before its sound; a WAV without sound; another file without sound. */
      readonly fault: 'no-bytes' | 'cut-off' | 'no-frames' | 'no-sound';
    }
  | {
      readonly code: 'recording-too-long';
      readonly fault: 'duration';
      readonly durationS: number;
      readonly mostS: number;
    }
  /** Compressed sound is decoded as a whole. */
  | {
      readonly code: 'recording-too-long';
      readonly fault: 'size';
      readonly bytes: number;
      readonly mostBytes: number;
    };
