import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { slideRecording } from '../support/slideRecording.ts';
import { writeWavFile } from '../support/wavFile.ts';
import type { Random } from '../bench/detector/random.ts';

const HEADING = 'fork_hz,ends,length_cm,diameter_mm,temperature_c,place';
const GOOD_ROWS = ['512,closed,15.7,35,21,Lab', '512,closed,49.4,35,21,Lab', '480,closed,16.9,35,21,Lab'];

const TEXT_FILES: readonly (readonly [name: string, text: string])[] = [
  ['good.csv', [HEADING, ...GOOD_ROWS].join('\n')],
  ['semicolons.csv', [HEADING.replaceAll(',', ';'), '512;closed;15,7;35;21,5;Flur'].join('\r\n')],
  ['partly.csv', [HEADING, ...GOOD_ROWS, '512,closed,-3,35,21,Lab', '9000,shut,x,,,'].join('\n')],
  ['edge.csv', [HEADING, '64,closed,130,500,-30,A', '4096,open,0.1,2,60,B'].join('\n')],
  ['no-rows.csv', HEADING],
  ['empty.csv', ''],
  ['broken.json', '{"schemaVersion":2,"marks":[{'],
  ['other.json', '{"hello":"world"}'],
  ['deep.json', '['.repeat(5000)],
  ['newer.json', '{"schemaVersion":99,"id":"x"}'],
  ['not-sound.wav', 'this is no sound'],
  ['results.csv', 'group,speed_mps,standard_uncertainty_mps\nA,344.1,0.6\nB,343.2,0.8'],
];

/** Files that somebody may drop on the page, good and broken, in a folder of the caller's. */
export function writeFilesAtHand(folder: string): readonly string[] {
  const texts = TEXT_FILES.map(([name, text]) => {
    const path = join(folder, name);
    writeFileSync(path, text);
    return path;
  });
  const sound = join(folder, 'slide.wav');
  const { samples, sampleRateHz } = slideRecording({ forkHz: 512, closed: true, seed: 11, talkDb: -10 });
  writeWavFile(sound, samples.subarray(0, 6 * sampleRateHz), sampleRateHz);
  return [...texts, sound];
}

/** A table or lengths as they come from the clipboard. */
export function pastedText(random: Random): string {
  return random.pick([
    '15.7\n49.4\n83.1',
    '512\tclosed\t15,7\n512\tclosed\t49,4',
    [HEADING, ...GOOD_ROWS].join('\n'),
    'nothing that could be read',
    '512;closed;abc',
  ]);
}
