import type { Experiment } from '../notebook/experiment.ts';

/** The whole experiment as a JSON file, waiting, left-out and deleted marks included. */
export function experimentJson(experiment: Experiment): string {
  return `${JSON.stringify(experiment, null, 2)}\n`;
}

/** A file name that every system takes: the title and the day of the last change. */
export function fileStem(experiment: Experiment): string {
  const title = experiment.title
    .normalize('NFKD')
    .replaceAll(/[^\w-]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 60);
  return `${title === '' ? 'experiment' : title}-${experiment.changedAt.slice(0, 10)}`;
}
