import { spawnSync } from 'node:child_process';
import { appendFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { encodeWav } from '../../../src/capture/wav.ts';
import { PracticeColumn } from '../../../src/capture/practice/practiceColumn.ts';
import { analyseWords } from '../../support/analyseCommand.ts';
import { writeWavFile } from '../../support/wavFile.ts';
import { growthExponent } from './sideBySide.ts';

const MEASURED = fileURLToPath(new URL('./measuredAnalyse.ts', import.meta.url));

const SAMPLE_RATE_HZ = 48_000;
/** Of a WAV as we write it: RIFF, fmt and the data chunk's head. */
const HEADER_BYTES = 44;

export interface RecordingsResult {
  readonly rows: readonly {
    readonly minutes: number;
    readonly seconds: number;
    readonly peakMegabytes: number;
  }[];
  readonly exponent: number;
}

/** `analyse` on recordings of several lengths, each in a process of its own: time and peak memory, start included. */
export function benchRecordings(lengthsMin: readonly number[]): RecordingsResult {
  const folder = mkdtempSync(join(tmpdir(), 'bench-recordings-'));
  try {
    const minute = slides();
    const rows = lengthsMin.map((minutes) => {
      const wav = join(folder, `${minutes}.wav`);
      writeRepeated(wav, minute, minutes);
      const start = performance.now();
      const child = spawnSync(process.execPath, [...analyseWords(MEASURED), wav], { encoding: 'utf8' });
      const seconds = (performance.now() - start) / 1000;
      const peak = /peak (\d+)/.exec(child.stderr)?.[1];
      if (child.status !== 0 || peak === undefined) throw new Error(`analyse failed: ${child.stderr}`);
      return { minutes, seconds, peakMegabytes: Number(peak) / 1000 };
    });
    return {
      rows,
      exponent: growthExponent(
        rows.map((row) => row.minutes),
        rows.map((row) => row.seconds),
      ),
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/**
 * One sound again and again as a WAV, without ever holding it whole: a process that is started counts its parent's
 * memory as its own peak.
 */
function writeRepeated(path: string, samples: Float32Array, times: number): void {
  const bytes = encodeWav([samples], SAMPLE_RATE_HZ);
  const dataLength = bytes.length - HEADER_BYTES;
  const view = new DataView(bytes.buffer);
  view.setUint32(4, HEADER_BYTES - 8 + times * dataLength, true);
  view.setUint32(40, times * dataLength, true);
  writeFileSync(path, bytes);
  for (let i = 1; i < times; i += 1) appendFileSync(path, bytes.subarray(HEADER_BYTES));
}

export interface CoresResult {
  readonly files: number;
  readonly cores: number;
  /** On one core, and on all. */
  readonly oneS: number;
  readonly allS: number;
  readonly isSameOutput: boolean;
}

/** `analyse` of many files of a minute each: on one core, and on all. */
export function benchCores(files: number): CoresResult {
  const folder = mkdtempSync(join(tmpdir(), 'bench-cores-'));
  try {
    const minute = slides();
    const names = Array.from({ length: files }, (_, i) => {
      const wav = join(folder, `${i}.wav`);
      // Each a little fainter, so that a mix-up of answers would show.
      writeWavFile(
        wav,
        minute.map((sample) => sample * (1 - i / (2 * files))),
        SAMPLE_RATE_HZ,
      );
      return wav;
    });
    const run = (threads: number): { seconds: number; output: string } => {
      const start = performance.now();
      const words = [...analyseWords(), '--fork', '512', '--json', '--threads', String(threads)];
      const child = spawnSync(process.execPath, [...words, ...names], { encoding: 'utf8' });
      if (child.status !== 0) throw new Error(`analyse failed: ${child.stderr}`);
      return { seconds: (performance.now() - start) / 1000, output: child.stdout };
    };
    const cores = availableParallelism();
    const one = run(1);
    const all = run(cores);
    const isSameOutput = one.output === all.output;
    return { files, cores, oneS: one.seconds, allS: all.seconds, isSameOutput };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** A minute at the practice column amid talk: three strikes, the tube slid to and fro. */
function slides(): Float32Array {
  const column = new PracticeColumn({}, 11, SAMPLE_RATE_HZ);
  column.setNoise('talk');
  column.setSlideSpeed(0.03);
  const parts = [0.6, 0.1, 0.6].map((toM) => {
    column.strike();
    column.slideTo(toM);
    const part = column.render(19 * SAMPLE_RATE_HZ);
    column.damp();
    return [part, column.render(SAMPLE_RATE_HZ)];
  });
  const minute = new Float32Array(60 * SAMPLE_RATE_HZ);
  let at = 0;
  for (const part of parts.flat()) {
    minute.set(part, at);
    at += part.length;
  }
  return minute;
}
