import { open } from 'node:fs/promises';
import { parseArgs } from 'node:util';
import { WavReader } from '../capture/wav.ts';
import { RecordingAnalysis } from '../session/analyseRecording.ts';
import type { CheckedReport } from '../session/analyseRecording.ts';
import { defaultToleranceHz } from '../session/forkTolerance.ts';
import { analysisLine, analysisTable } from './analysisText.ts';
import { locate } from './locate.ts';

const USAGE = `usage: npm run --silent analyse -- --fork HZ [--tolerance HZ] [--live] [--check] [--json] FILE.wav…
  --fork       pitch stamped on the fork, 60..2100 Hz
  --tolerance  how far the real pitch may be off it (default: 0.5 % or 1.5 Hz, whichever is more)
  --live       what the live detector flags, as the page would show it while listening
  --check      the column stays, the fork goes away and comes back: is it at resonance?
  --json       one line of JSON a file`;

interface Order {
  readonly forkHz: number;
  readonly toleranceHz: number;
  readonly live: boolean;
  readonly check: boolean;
  readonly json: boolean;
  readonly files: readonly string[];
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
        json: { type: 'boolean', default: false },
      },
    });
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
  const { values, positionals } = parsed;
  if (values.fork === undefined)
    return '--fork is missing: give the pitch stamped on the fork in Hz, e.g. --fork 512';
  const forkHz = Number(values.fork.replace(',', '.'));
  if (!(forkHz >= 60 && forkHz <= 2100)) return `--fork ${values.fork} is not a pitch from 60 to 2100 Hz`;
  const toleranceHz =
    values.tolerance === undefined ? defaultToleranceHz(forkHz) : Number(values.tolerance.replace(',', '.'));
  if (!(toleranceHz > 0 && toleranceHz <= 15)) {
    return `--tolerance ${values.tolerance ?? ''} is not a width from 0 to 15 Hz`;
  }
  if (positionals.length === 0) return 'no file given';
  return {
    forkHz,
    toleranceHz,
    live: values.live,
    check: values.check,
    json: values.json,
    files: positionals,
  };
}

async function analyseFile(file: string, order: Order): Promise<CheckedReport> {
  const handle = await open(locate(file)).catch((error: unknown) => {
    const code = (error as { code?: string }).code;
    throw new Error(
      code === 'ENOENT' ? 'there is no such file.' : `the file can’t be opened (${code ?? 'unknown'}).`,
    );
  });
  try {
    const stats = await handle.stat();
    if (stats.isDirectory()) throw new Error('this is a folder, not a recording.');
    const reader = await WavReader.open(async (offset, length) => {
      const bytes = new Uint8Array(length);
      const { bytesRead } = await handle.read(bytes, 0, length, offset);
      return bytes.subarray(0, bytesRead);
    }, stats.size);
    const { sampleRateHz } = reader.format;
    const analysis = new RecordingAnalysis({
      sampleRateHz,
      fork: { nominalHz: order.forkHz, toleranceHz: order.toleranceHz },
      live: order.live,
      check: order.check,
    });
    for await (const block of reader.blocks()) analysis.push(block);
    return analysis.finish();
  } catch (error) {
    if (error instanceof RangeError && error.message.startsWith('frequencyHz')) {
      throw new Error(
        `a fork of ${order.forkHz} Hz doesn’t fit this recording’s sample rate: ${error.message}.`,
        {
          cause: error,
        },
      );
    }
    throw error;
  } finally {
    await handle.close();
  }
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
  let status = 0;
  for (const file of order.files) {
    try {
      const report = await analyseFile(file, order);
      process.stdout.write(order.json ? `${analysisLine(file, report)}\n` : analysisTable(file, report));
    } catch (thrown) {
      const error = thrown instanceof Error ? thrown.message : String(thrown);
      process.stdout.write(
        order.json ? `${JSON.stringify({ file, error })}\n` : `${file}\n  can’t be used\n\n`,
      );
      process.stderr.write(`${file}: ${error}\n`);
      status = 1;
    }
  }
  return status;
}

process.exitCode = await main(process.argv.slice(2));
