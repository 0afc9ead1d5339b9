import { spawnSync } from 'node:child_process';
import { appendFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { encodeWav } from '../../../src/capture/wav.ts';
import { PracticeColumn } from '../../../src/capture/practice/practiceColumn.ts';
import { commandWords } from '../../support/commandWords.ts';
import { growthExponent } from './sideBySide.ts';

const MEASURED = fileURLToPath(new URL('./measuredAnalyse.ts', import.meta.url));

export const SAMPLE_RATE_HZ = 48_000;
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
      const child = spawnSync(process.execPath, [...commandWords('analyse', MEASURED), wav], {
        encoding: 'utf8',
      });
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

/** A minute at 48 kHz at the practice column amid talk: three strikes, the tube slid to and fro. */
export function slides(): Float32Array {
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
