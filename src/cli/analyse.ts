import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import { isWithin, LIMITS } from '../limits/limits.ts';
import { defaultToleranceHz, WIDEST_TOLERANCE_HZ } from '../session/hearing/forkTolerance.ts';
import { guessesOf } from '../resonance/following/columnGuess.ts';
import type { FollowedTube } from '../session/recording/analyseRecording.ts';
import type { AnalysisOrder, FileAnswer } from './answerFile.ts';
import { speakEnglish } from '../words/english.ts';

speakEnglish();

const mm = (lengthM: number): number => Number((1000 * lengthM).toPrecision(6));

const USAGE = `usage: npm run --silent analyse -- --fork HZ [--tolerance HZ] [--live] [--check] [--follow] [--ends closed|open] [--diameter MM] [--threads N] [--json] FILE.wav…
  --fork       pitch stamped on the fork, ${LIMITS.stampedHz.lowest}..${LIMITS.stampedHz.highest} Hz
  --tolerance  how far the real pitch may be off it (default: 0.5 % or 1.5 Hz, whichever is more)
  --live       what the live detector flags, as the page would show it while listening
  --check      the column stays, the fork goes away and comes back: is it at resonance?
  --follow     where the column is after each pass, ten times a second: how far from resonance, and on which side
  --ends       of the tube that is followed: closed (one end) or open (both)
  --diameter   its inside diameter, ${mm(LIMITS.diameterM.lowest)}..${mm(LIMITS.diameterM.highest)} mm; with --ends, distances are in metres, too
  --threads    files worked on at a time (default: as many as the machine has cores)
  --json       one line of JSON a file`;

const MM_PER_M = 1000;

interface Order extends AnalysisOrder {
  readonly files: readonly string[];
  readonly threads: number;
}

/** @returns the order, or what is wrong with the words */
function readOrder(words: readonly string[]): Order | string {
  let parsed;
  try {
    parsed = parseArgs({
      args: [...words],
      allowPositionals: true,
      options: {
        fork: { type: 'string' },
        tolerance: { type: 'string' },
        live: { type: 'boolean', default: false },
        check: { type: 'boolean', default: false },
        follow: { type: 'boolean', default: false },
        ends: { type: 'string' },
        diameter: { type: 'string' },
        threads: { type: 'string', default: String(availableParallelism()) },
        json: { type: 'boolean', default: false },
      },
    });
  } catch (error) {
    return optionFault(error);
  }
  const { values, positionals } = parsed;
  if (values.fork === undefined)
    return '--fork is missing: give the pitch stamped on the fork in Hz, e.g. --fork 512';
  const forkHz = Number(values.fork.replace(',', '.'));
  if (!isWithin(LIMITS.stampedHz, forkHz)) {
    const { lowest, highest } = LIMITS.stampedHz;
    return `--fork ${values.fork} is not a pitch from ${lowest} to ${highest} Hz`;
  }
  const toleranceHz =
    values.tolerance === undefined ? defaultToleranceHz(forkHz) : Number(values.tolerance.replace(',', '.'));
  if (!(toleranceHz > 0 && toleranceHz <= WIDEST_TOLERANCE_HZ)) {
    return `--tolerance ${values.tolerance ?? ''} is not a width from 0 to ${WIDEST_TOLERANCE_HZ} Hz`;
  }
  const { ends } = values;
  if (ends !== undefined && ends !== 'closed' && ends !== 'open')
    return `--ends ${ends} is neither closed nor open`;
  const diameterM =
    values.diameter === undefined ? null : Number(values.diameter.replace(',', '.')) / MM_PER_M;
  if (diameterM !== null && !isWithin(LIMITS.diameterM, diameterM)) {
    const { lowest, highest } = LIMITS.diameterM;
    return `--diameter ${values.diameter ?? ''} is not a width from ${mm(lowest)} to ${mm(highest)} mm`;
  }
  const tube: FollowedTube | null = ends === undefined || diameterM === null ? null : { ends, diameterM };
  if (tube !== null && !canBeFollowed(tube, forkHz)) {
    return `--diameter ${values.diameter ?? ''} mm is no tube that resonates clearly at ${forkHz} Hz`;
  }
  const threads = Number(values.threads);
  if (!(Number.isInteger(threads) && threads >= 1 && threads <= 256)) {
    return `--threads ${values.threads} is not a whole number from 1 to 256`;
  }
  if (positionals.length === 0) return 'no file given';
  return {
    forkHz,
    toleranceHz,
    live: values.live,
    check: values.check,
    ...(values.follow ? { follow: { tube } } : {}),
    json: values.json,
    threads,
    files: positionals,
  };
}

/** Whether the physics of tubes holds for it. */
function canBeFollowed(tube: FollowedTube, frequencyHz: number): boolean {
  try {
    return guessesOf({ ...tube, frequencyHz }).length > 0;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}

/** What is wrong with the options, in one line. */
function optionFault(error: unknown): string {
  const text = error instanceof Error ? error.message : String(error);
  const name = /'(--?[\w-]+)/.exec(text)?.[1] ?? '';
  const { code } = error as { code?: string };
  if (code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION') return `${name} is no option of this command`;
  if (code === 'ERR_PARSE_ARGS_INVALID_OPTION_VALUE') {
    return text.includes('does not take')
      ? `${name} takes no value`
      : `${name} needs a value, and none below zero`;
  }
  return text;
}

async function main(words: readonly string[]): Promise<number> {
  if (words.includes('--help')) {
    process.stdout.write(`${USAGE}\n`);
    return 0;
  }
  const order = readOrder(words);
  if (typeof order === 'string') {
    process.stderr.write(`${order}\n${USAGE}\n`);
    return 1;
  }
  const { files, threads, ...each } = order;
  let status = 0;
  for await (const { output, error } of answers(files, threads, each)) {
    process.stdout.write(output);
    if (error === null) continue;
    process.stderr.write(error);
    status = 1;
  }
  return status;
}

/** One answer a file, in the files' order. */
async function* answers(
  files: readonly string[],
  mostThreads: number,
  order: AnalysisOrder,
): AsyncGenerator<FileAnswer> {
  const threads = Math.min(files.length, mostThreads);
  if (threads < 2) {
    const { default: answerFile } = await import('./answerFile.ts');
    for (const file of files) yield await answerFile({ file, order });
    return;
  }
  // What reads and analyses is loaded by the threads, not here as well.
  const { Tinypool } = await import('tinypool');
  const pool = new Tinypool({
    filename: new URL('./answerWorker.js', import.meta.url).href,
    minThreads: threads,
    maxThreads: threads,
  });
  try {
    const running = files.map((file) => pool.run({ file, order }) as Promise<FileAnswer>);
    for (const answer of running) yield await answer;
  } finally {
    await pool.destroy();
  }
}

// Whoever reads only the first lines (| head) closes the pipe: that is no fault.
process.stdout.on('error', () => process.exit());
process.exitCode = await main(process.argv.slice(2));
