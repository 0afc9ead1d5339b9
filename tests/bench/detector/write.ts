import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { recordingSet, type SetName } from './recordingSet.ts';
import { simulate, type Truth } from './simulate.ts';
import { VOICES_OPTION, voicesOrEnd } from './voices/chooseVoices.ts';
import { writeWav } from './wav.ts';

/** Writes a set of recordings as 16-bit WAV with a truth.json, to listen to or to analyse from the command line. */
const { values } = parseArgs({
  options: {
    set: { type: 'string', default: 'tune' },
    out: { type: 'string' },
    each: { type: 'string' },
    voices: VOICES_OPTION,
  },
});
const names: readonly string[] = ['tune', 'report', 'check', 'check-tune'];
if (values.out === undefined || !names.includes(values.set)) {
  console.error(
    'Usage: tsx tests/bench/detector/write.ts --set tune|report|check|check-tune --out FOLDER [--each COUNT] [--voices generated|recorded|synthesised]',
  );
  process.exit(2);
}
const voices = voicesOrEnd(values.voices);
console.log(`Voices: ${voices.kind}.`);
mkdirSync(values.out, { recursive: true });
const truths: (Truth & { readonly file: string; readonly sampleRateHz: number })[] = [];
for (const entry of recordingSet(
  values.set as SetName,
  values.each === undefined ? null : Number(values.each),
)) {
  const recording = simulate(entry.scenario, entry.seed, voices);
  const file = `${entry.scenario.condition}-${entry.seed}.wav`;
  writeFileSync(join(values.out, file), writeWav(recording.samples, recording.sampleRateHz));
  truths.push({ file, sampleRateHz: recording.sampleRateHz, ...recording.truth });
  console.log(file);
}
writeFileSync(join(values.out, 'truth.json'), JSON.stringify(truths, null, 1));
