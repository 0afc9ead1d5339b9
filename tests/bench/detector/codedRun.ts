import { parseArgs } from 'node:util';
import { CODERS, installedCoders, throughCoder } from './coders.ts';
import { listenTo, type HeardFlag } from './listenTo.ts';
import { APART_CONDITIONS } from './scenario.ts';
import { addScores, f1, precision, recall, score, type Score } from './score.ts';
import { VOICES_OPTION, voicesOrEnd } from './voices/chooseVoices.ts';
import type { WavSound } from './wav.ts';
import { ownWorld, type HeardPassage } from './worldSound.ts';

/** The same recordings before and after real coders. */
const USAGE = `Usage: node --import tsx/esm tests/bench/detector/codedRun.ts [--each COUNT]
       [--voices generated|recorded|synthesised]: COUNT recordings a condition of the reporting set, 2 by default`;

const LOOKS = ['live', 'second look'] as const;
type Look = (typeof LOOKS)[number];

const { values } = parseArgs({ options: { each: { type: 'string', default: '2' }, voices: VOICES_OPTION } });
const each = Number(values.each);
if (!(each >= 1)) {
  console.error(USAGE);
  process.exit(2);
}
const coders = installedCoders();
for (const { name } of CODERS.filter((coder) => !coders.includes(coder))) {
  console.log(`${name}: skipped, ffmpeg isn’t there or has no such coder.`);
}
const entries = ownWorld('report', each, voicesOrEnd(values.voices)).filter(
  ({ condition }) => !APART_CONDITIONS.some((apart) => apart === condition),
);

/** What was reached by now: a coder's name, '' for none, then the look. */
const reached = new Map<string, Score>();
for (const entry of entries) {
  const { truth, ...sound } = entry.make();
  hear('', sound, truth.nominalHz, truth.passages);
  for (const coder of coders) hear(coder.name, throughCoder(sound, coder), truth.nominalHz, truth.passages);
}

console.log(`${entries.length} recordings, ${reachedBy('', 'live', 'all').audible} audible passages.\n`);
console.log(row('precision / recall / F1', ...LOOKS.flatMap((look) => [look, `${look}, sure`])));
for (const name of ['', ...coders.map((coder) => coder.name)]) {
  const cells = LOOKS.flatMap((look) =>
    (['all', 'sure'] as const).map((which) => figures(reachedBy(name, look, which))),
  );
  console.log(row(name === '' ? 'not coded' : name, ...cells));
}

function hear(
  name: string,
  { samples, sampleRateHz }: WavSound,
  nominalHz: number,
  passages: readonly HeardPassage[],
): void {
  for (const look of LOOKS) {
    const { flags } = listenTo(samples, sampleRateHz, nominalHz, { live: look === 'live' });
    add(name, look, 'all', flags, passages);
    const sure = flags.filter(({ certainty }) => certainty === 'sure');
    add(name, look, 'sure', sure, passages);
  }
}

function add(
  name: string,
  look: Look,
  which: 'all' | 'sure',
  flags: readonly HeardFlag[],
  passages: readonly HeardPassage[],
): void {
  const before = reachedBy(name, look, which);
  reached.set(key(name, look, which), addScores([before, score(flags, passages)]));
}

function reachedBy(name: string, look: Look, which: 'all' | 'sure'): Score {
  return reached.get(key(name, look, which)) ?? addScores([]);
}

function key(name: string, look: Look, which: 'all' | 'sure'): string {
  return [name, look, which].join('|');
}

function figures(one: Score): string {
  return [precision(one), recall(one), f1(one)].map((value) => value?.toFixed(3) ?? '–').join(' / ');
}

function row(name: string, ...cells: readonly string[]): string {
  return name.padEnd(28) + cells.map((cell) => cell.padStart(24)).join('');
}
