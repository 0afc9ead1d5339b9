/** Where the sound comes from, as one chooses it. */
export type SourceKind = 'practice' | 'microphone' | 'recording';
