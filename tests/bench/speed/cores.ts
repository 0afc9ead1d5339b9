import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { commandWords } from '../../support/commandWords.ts';
import { writeWavFile } from '../../support/wavFile.ts';
import { SAMPLE_RATE_HZ, slides } from './recordings.ts';
import { median } from './sideBySide.ts';

/** All times are medians of the rounds, start of the processes included. */
export interface CoresResult {
  readonly files: number;
  readonly cores: number;
  /** On one thread, and on as many as there are cores. */
  readonly oneS: number;
  readonly allS: number;
  /** A process of one thread for each core, each with its share of the files: what the machine itself gives. */
  readonly apartS: number;
  readonly isSameOutput: boolean;
}

/** `analyse` of many files of a minute each: on one core, on all, and by processes that know nothing of each other. */
export async function benchCores(files: number, rounds: number): Promise<CoresResult> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-cores-'));
  try {
    const names = writeFiles(folder, files);
    const cores = availableParallelism();
    const share = Math.ceil(files / cores);
    const shares = Array.from({ length: cores }, (_, i) => names.slice(i * share, (i + 1) * share));
    const ways = [
      () => analyse(names, 1),
      () => analyse(names, cores),
      async () => (await Promise.all(shares.map((own) => analyse(own, 1)))).join(''),
    ];
    const seconds = ways.map((): number[] => []);
    const outputs = new Set<string>();
    for (let round = 0; round < rounds; round += 1) {
      for (const [i, way] of ways.entries()) {
        const start = performance.now();
        outputs.add(await way());
        seconds[i]?.push((performance.now() - start) / 1000);
      }
    }
    const [oneS = NaN, allS = NaN, apartS = NaN] = seconds.map(median);
    return { files, cores, oneS, allS, apartS, isSameOutput: outputs.size === 1 };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** A minute each, each a little fainter, so that a mix-up of answers would show. @returns their paths */
function writeFiles(folder: string, count: number): string[] {
  const minute = slides();
  return Array.from({ length: count }, (_, i) => {
    const wav = join(folder, `${i}.wav`);
    writeWavFile(
      wav,
      minute.map((sample) => sample * (1 - i / (2 * count))),
      SAMPLE_RATE_HZ,
    );
    return wav;
  });
}

/** @returns what it prints */
function analyse(files: readonly string[], threads: number): Promise<string> {
  const words = [
    ...commandWords('analyse'),
    '--fork',
    '512',
    '--json',
    '--threads',
    String(threads),
    ...files,
  ];
  const child = spawn(process.execPath, words, { stdio: ['ignore', 'pipe', 'inherit'] });
  let output = '';
  child.stdout.setEncoding('utf8').on('data', (data: string) => (output += data));
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (status) => {
      if (status === 0) resolve(output);
      else reject(new Error(`analyse ended with status ${status}`));
    });
  });
}
