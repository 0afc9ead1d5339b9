import { parseArgs } from 'node:util';
import { listenTo, type HeardFlag } from './listenTo.ts';
import { recordedCompany } from './recorded/recordedCompany.ts';
import { recordedAlone } from './recorded/recordedWorld.ts';
import { SoundFiles } from './recorded/soundFiles.ts';
import { generatedAlone, piecesAlone, type AlonePiece } from './soundAlone.ts';
import { VOICES_OPTION, voicesOrEnd } from './voices/chooseVoices.ts';
import type { VoiceKind } from './voices/voices.ts';

/** Counts what is flagged where there is nothing to flag: talk, music, taps and water without a fork. */
const USAGE = `Usage: node --import tsx/esm tests/bench/detector/aloneRun.ts [--minutes COUNT] [--only talk|music|taps|water,…]
       [--voices generated|recorded|synthesised] [--sounds FOLDER] [--first SEED] [--list]: COUNT minutes of each, 30 by
       default; with --sounds those that recorded/fetchSounds.ts fetched: music, taps, water, machine, animals, glass`;

/** Length of a piece, s. */
const PIECE_S = 60;

/** What was flagged in a piece. */
interface Flagged {
  readonly live: readonly HeardFlag[];
  readonly secondLook: readonly HeardFlag[];
}

const { values } = parseArgs({
  options: {
    minutes: { type: 'string', default: '30' },
    only: { type: 'string' },
    voices: VOICES_OPTION,
    sounds: { type: 'string' },
    first: { type: 'string', default: '900001' },
    list: { type: 'boolean', default: false },
  },
});
const minutes = Number(values.minutes);
const voices = voicesOrEnd(values.voices);
const sounds =
  values.sounds === undefined
    ? generatedAlone(voices)
    : recordedAlone(recordedCompany(new SoundFiles(values.sounds), 'tell'), voices);
const asked = values.only?.split(',') ?? Object.keys(sounds.kinds);
const kinds = Object.keys(sounds.kinds).filter((kind) => asked.includes(kind));
if (!(minutes > 0) || kinds.length === 0) {
  console.error(USAGE);
  process.exit(2);
}

const made = values.sounds === undefined ? `voices: ${voices.kind}` : 'recorded sounds';
console.log(`Flags in ${minutes} minutes of each, no fork and no column, ${made}.\n`);
console.log(line('', 'live: sure', 'maybe', 'second look: sure', 'maybe'));
for (const kind of kinds) {
  const pieces = piecesAlone(sounds, kind, minutes, PIECE_S, Number(values.first));
  const heard = pieces.map((piece) => ({ piece, flagged: hear(piece) }));
  for (const what of new Set(pieces.map((piece) => piece.what))) {
    const own = heard.filter(({ piece }) => piece.what === what).map(({ flagged }) => flagged);
    const live = own.flatMap((one) => one.live);
    const second = own.flatMap((one) => one.secondLook);
    const counts = [live, second].flatMap((flags) => [count(flags, 'sure'), count(flags, 'maybe')]);
    console.log(line(named(kind, what, voices.kind), ...counts.map(String)));
  }
  if (values.list) for (const { piece, flagged } of heard) printFlags(piece, flagged);
}

function hear(piece: AlonePiece): Flagged {
  const { samples, sampleRateHz } = piece.make();
  const flags = (live: boolean): readonly HeardFlag[] =>
    listenTo(samples, sampleRateHz, piece.nominalHz, { live }).flags;
  return { live: flags(true), secondLook: flags(false) };
}

function named(kind: string, what: string, voice: VoiceKind): string {
  if (kind === 'music') return `music, ${what}`;
  return kind === 'talk' ? `talk, ${voice}` : kind;
}

function count(flags: readonly HeardFlag[], certainty: HeardFlag['certainty']): number {
  return flags.filter((flag) => flag.certainty === certainty).length;
}

function printFlags({ what, seed, nominalHz }: AlonePiece, { live, secondLook }: Flagged): void {
  for (const [name, flags] of [
    ['live', live],
    ['second look', secondLook],
  ] as const) {
    for (const { timeS, certainty, probability } of flags) {
      console.log(
        `  ${what} ${seed}, ${nominalHz} Hz, ${name}: ${timeS.toFixed(2)} s ${certainty} ${probability.toFixed(2)}`,
      );
    }
  }
}

function line(name: string, ...cells: readonly string[]): string {
  return name.padEnd(24) + cells.map((cell) => cell.padStart(20)).join('');
}
