import type { Experiment } from '../notebook/experiment.ts';
import { experimentJson, fileStem } from '../report/experimentJson.ts';

/** Hands a file to the browser to save. */
export function saveFile(name: string, type: string, content: BlobPart): void {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The download has its own hold on the data once it began.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

/** Hands the experiment's own file to the browser to save. */
export function saveExperiment(experiment: Experiment): void {
  saveFile(`${fileStem(experiment)}.json`, 'application/json', experimentJson(experiment));
}
