import { readExperiment } from '../../notebook/readExperiment.ts';
import type { ExperimentReading } from '../../notebook/readExperiment.ts';

/** Far above any experiment; a larger file isn't one. */
const LARGEST_BYTES = 20_000_000;

/** Reads a JSON file as an experiment. Every fault is a sentence; nothing is thrown. */
export async function readExperimentFile(file: Blob): Promise<ExperimentReading> {
  if (file.size > LARGEST_BYTES) {
    return { kind: 'faults', faults: ['The file is larger than 20 MB: that can’t be an experiment.'] };
  }
  if (file.size === 0) return { kind: 'faults', faults: ['The file is empty.'] };
  let value: unknown;
  try {
    value = JSON.parse(await file.text());
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return { kind: 'faults', faults: [`The file isn’t JSON: ${reason}`] };
  }
  return readExperiment(value);
}
