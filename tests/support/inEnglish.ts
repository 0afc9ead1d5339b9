import { speakEnglish } from '../../src/words/english.ts';

/** In every worker: what is said is said in English, unless a test says otherwise and puts it back. */
speakEnglish();
