import { execFileSync } from 'node:child_process';
import { readWav, type WavSound } from '../wav.ts';
import { ClipVoices } from './clipVoices.ts';
import type { Voices } from './voices.ts';

const SENTENCES = [
  'Hold it a little higher and slide the tube down slowly.',
  'I think it was louder at sixteen centimetres, write that down.',
  'Who has the other fork? We need the one with five hundred and twelve.',
  'No, wait, you went past it. Go back a bit.',
  'Can somebody read the thermometer, please? It says twenty one and a half.',
  'We are already at the third one and they are still looking for the first.',
  'Do not hit it on the table, use the rubber block over there.',
  'How many more do we need before the end of the lesson?',
];

/**
 * Voices of a speech synthesiser, for benchmarks alone: no test may depend on what is installed.
 * @throws Error that says which package brings it
 */
export function synthesisedVoices(): Voices {
  const sentences = SENTENCES.map((sentence, i) => spoken(sentence, i % 2 === 0 ? 'en+f3' : 'en+m3'));
  return new ClipVoices('synthesised', (random) => random.pick(sentences));
}

function spoken(sentence: string, voice: string): WavSound {
  let bytes: Buffer;
  try {
    bytes = execFileSync('espeak-ng', ['-v', voice, '-s', '150', '--stdout', sentence], {
      stdio: ['ignore', 'pipe', 'ignore'],
      maxBuffer: 1 << 25,
    });
  } catch (error) {
    throw new Error('--voices synthesised: espeak-ng did not speak. Debian: apt-get install espeak-ng.', {
      cause: error,
    });
  }
  const sound = readWav(bytes);
  if (sound === null) throw new Error('--voices synthesised: espeak-ng gave no 16-bit WAV.');
  return sound;
}
