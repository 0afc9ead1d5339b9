import { fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { recordedCompany } from './recorded/recordedCompany.ts';
import { practisedWorld, recordedWorld } from './recorded/recordedWorld.ts';
import { SoundFiles } from './recorded/soundFiles.ts';
import type { SetName } from './recordingSet.ts';
import { runPart, type PartOrder, type RecordingOutcome } from './runPart.ts';
import { printChecks, printFrequencies, printSlides } from './tables.ts';
import { APART_CONDITIONS, SET_SEEDS } from './scenario.ts';
import { variedWorld } from './variedWorld.ts';
import { VOICES_OPTION, voicesOrEnd } from './voices/chooseVoices.ts';
import type { Voices } from './voices/voices.ts';
import { reportWorlds } from './worldReport.ts';
import { folderWorld, ownWorld, type WorldEntry } from './worldSound.ts';

const USAGE = `Usage: tsx tests/bench/detector/run.ts [--set tune|report] [--each COUNT] [--only CONDITION,…]
       [--voices generated|recorded|synthesised] [--no-competitors] [--no-bench] [--no-checks] [--list]
       [--processes 1|2]
       [--worlds [--varied COUNT] [--folders FOLDER,…] [--sounds FOLDER [--recorded COUNT]] [--first SEED]]: beside the own
       set the varied world, recordings in folders, and forks amid the sounds of recorded/fetchSounds.ts, COUNT a condition`;

if (process.send !== undefined && process.argv[2] === '--part') {
  const order = JSON.parse(process.argv[3] ?? '') as PartOrder;
  runPart(order, (outcome) => process.send?.(outcome));
  process.disconnect();
} else {
  await main();
}

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      set: { type: 'string', default: 'report' },
      each: { type: 'string' },
      voices: VOICES_OPTION,
      only: { type: 'string' },
      processes: { type: 'string', default: '2' },
      list: { type: 'boolean', default: false },
      'no-competitors': { type: 'boolean', default: false },
      'no-bench': { type: 'boolean', default: false },
      worlds: { type: 'boolean', default: false },
      varied: { type: 'string', default: '5' },
      folders: { type: 'string', default: '' },
      sounds: { type: 'string' },
      recorded: { type: 'string', default: '6' },
      first: { type: 'string', default: String(SET_SEEDS.report) },
      'no-checks': { type: 'boolean', default: false },
    },
  });
  if (values.set !== 'tune' && values.set !== 'report') {
    console.error(`--set: tune or report, got ${values.set}\n${USAGE}`);
    process.exit(2);
  }
  const voices = voicesOrEnd(values.voices).kind;
  if (values.worlds) {
    const chosen = voicesOrEnd(values.voices);
    const isCounted = ({ condition }: WorldEntry): boolean =>
      !APART_CONDITIONS.some((apart) => apart === condition);
    const entries = [
      ...ownWorld(values.set, values.each === undefined ? null : Number(values.each), chosen).filter(
        isCounted,
      ),
      ...variedWorld(Number(values.first), Number(values.varied), chosen),
      ...values.folders
        .split(',')
        .filter((folder) => folder !== '')
        .flatMap(folderWorld),
      ...(values.sounds === undefined
        ? []
        : amidRecorded(values.sounds, values.first, values.recorded, chosen)),
    ];
    reportWorlds(entries, { list: values.list, competitors: !values['no-competitors'] });
    return;
  }
  const bench = !values['no-bench'];
  const order = (set: SetName): Omit<PartOrder, 'part' | 'of'> => ({
    set,
    each: values.each === undefined ? null : Number(values.each),
    only: values.only ?? null,
    bench,
    competitors: !values['no-competitors'],
    voices,
  });
  const processes = Math.max(1, Math.min(4, Number(values.processes)));
  console.log(
    `Detector benchmark, set to ${values.set === 'tune' ? 'tune on' : 'report'}, voices: ${voices}.\n` +
      'A flag is right within 0.35 s of a passage, or its half-width where longer. Audible: the tone at its peak\n' +
      '10 dB or more above the noise in 10 Hz, risen by 3 dB or more over the fork alone.\n',
  );
  const slides = await collect(order(values.set), processes);
  printSlides(slides, values.list);
  printFrequencies(slides);
  if (bench && !values['no-checks'] && values.only === undefined) {
    printChecks(await collect(order(values.set === 'tune' ? 'check-tune' : 'check'), processes), values.list);
  }
}

/** Forks amid the half of the fetched sounds that nobody has learned from, in two kinds of hands. */
function amidRecorded(folder: string, first: string, each: string, voices: Voices): WorldEntry[] {
  const company = recordedCompany(new SoundFiles(folder), 'tell');
  return [recordedWorld, practisedWorld].flatMap((world) =>
    world(Number(first), Number(each), voices, company),
  );
}

/** Shares the recordings among processes. */
async function collect(
  order: Omit<PartOrder, 'part' | 'of'>,
  processes: number,
): Promise<RecordingOutcome[]> {
  const outcomes: RecordingOutcome[] = [];
  const self = fileURLToPath(import.meta.url);
  await Promise.all(
    Array.from(
      { length: processes },
      (_, part) =>
        new Promise<void>((resolve, reject) => {
          const child = fork(self, ['--part', JSON.stringify({ ...order, part, of: processes })]);
          child.on('message', (outcome) => outcomes.push(outcome as RecordingOutcome));
          child.on('error', reject);
          child.on('exit', (code) =>
            code === 0 ? resolve() : reject(new Error(`A part of the benchmark ended with code ${code}.`)),
          );
        }),
    ),
  );
  // Processes answer in any order; the tables don't depend on it.
  return outcomes.sort(
    (a, b) => a.truth.condition.localeCompare(b.truth.condition) || a.truth.seed - b.truth.seed,
  );
}
