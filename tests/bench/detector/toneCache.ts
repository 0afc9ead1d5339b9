import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { SideBandFrame, SideBandNoise } from '../../../src/tone/sideBandNoise.ts';
import { ToneSeries } from '../../../src/tone/toneSeries.ts';
import { ToneStream } from '../../../src/tone/toneStream.ts';
import type { WorldEntry, WorldTruth } from './worldSound.ts';

interface SeriesFile {
  readonly truth: WorldTruth;
  readonly rateHz: number;
  readonly bandwidthHz: number;
  readonly sideBands: readonly SideBandFrame[];
}

/**
 * The tone stage's output for one recording, from the cache where it is there.
 * @param folder  of the cache; null: none
 */
export function seriesOf(entry: WorldEntry, folder: string | null): [WorldTruth, ToneSeries] {
  const name = `${entry.world}-${entry.condition}-${entry.seed}`;
  const stem = folder === null ? null : join(folder, name);
  if (stem !== null && existsSync(`${stem}.json`)) return readSeries(stem);
  const { samples, sampleRateHz, truth } = entry.make();
  const stream = new ToneStream(sampleRateHz, truth.nominalHz);
  stream.push(samples);
  stream.finish();
  if (stem !== null && folder !== null) {
    mkdirSync(folder, { recursive: true });
    writeSeries(stem, truth, stream.series);
  }
  return [truth, stream.series];
}

function readSeries(stem: string): [WorldTruth, ToneSeries] {
  const file = JSON.parse(readFileSync(`${stem}.json`, 'utf8')) as SeriesFile;
  const bytes = readFileSync(`${stem}.bin`);
  const values = new Float32Array(bytes.buffer, bytes.byteOffset, bytes.length / 4);
  const series = new ToneSeries(file.rateHz, file.bandwidthHz);
  const n = values.length / 2;
  series.pushValues(values.subarray(0, n), values.subarray(n), n);
  for (const frame of file.sideBands) series.sideBands.push(frame);
  return [file.truth, series];
}

function writeSeries(stem: string, truth: WorldTruth, series: ToneSeries): void {
  const n = series.length;
  const { sideBands } = series;
  const values = new Float32Array(2 * n);
  values.set(series.re.subarray(0, n));
  values.set(series.im.subarray(0, n), n);
  writeFileSync(`${stem}.bin`, values);
  const file: SeriesFile = {
    truth,
    rateHz: series.rateHz,
    bandwidthHz: series.bandwidthHz,
    sideBands: Array.from({ length: sideBands.length }, (_, i) => frameOf(sideBands, i)),
  };
  writeFileSync(`${stem}.json`, JSON.stringify(file));
}

/** One frame of the noise beside the fork. */
export const frameOf = ({ near, far, floor }: SideBandNoise, i: number): SideBandFrame => ({
  near: near[i],
  far: far[i],
  floor: floor[i],
});
