import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { PracticeColumn } from '../../../src/capture/practice/practiceColumn.ts';
import { writeWavFile } from '../../support/wavFile.ts';
import { growthExponent } from './sideBySide.ts';

const SAMPLE_RATE_HZ = 48_000;

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
      const samples = new Float32Array(minutes * minute.length);
      for (let i = 0; i < minutes; i += 1) samples.set(minute, i * minute.length);
      const wav = join(folder, `${minutes}.wav`);
      writeWavFile(wav, samples, SAMPLE_RATE_HZ);
      const start = performance.now();
      const child = spawnSync(
        process.execPath,
        ['--import', 'tsx', fileURLToPath(new URL('./measuredAnalyse.ts', import.meta.url)), wav],
        { encoding: 'utf8' },
      );
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
