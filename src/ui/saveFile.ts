import type { Experiment } from '../notebook/experiment.ts';
import { experimentJson, fileStem } from '../report/experimentJson.ts';

/** How long a file is held for a browser that still asks, ms. */
const HELD_MS = 60_000;

/** Hands a file to the browser to save. */
export function saveFile(name: string, type: string, content: BlobPart): void {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The download has its own hold on the data once it began; a tablet asks first where to.
  setTimeout(() => URL.revokeObjectURL(url), HELD_MS);
}

/** Hands the experiment's own file to the browser to save. */
export function saveExperiment(experiment: Experiment): void {
  saveFile(`${fileStem(experiment)}.json`, 'application/json', experimentJson(experiment));
}
