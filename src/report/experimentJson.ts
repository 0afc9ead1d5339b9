import { titleWords } from '../words/titles.ts';
import { LARGEST_JSON_BYTES } from '../limits/sizes.ts';
import type { Experiment } from '../notebook/experiment.ts';

/**
 * The whole experiment as a JSON file, waiting, left-out and deleted marks included; without blanks where these would
 * make it larger than a file that is opened again.
 */
export function experimentJson(experiment: Experiment): string {
  const spaced = `${JSON.stringify(experiment, null, 2)}\n`;
  const isLarge = new TextEncoder().encode(spaced).length > LARGEST_JSON_BYTES;
  return isLarge ? `${JSON.stringify(experiment)}\n` : spaced;
}

/** Longest title in a file's name: of letters of four bytes, with the day and an ending, it stays below 255 bytes. */
const LONGEST_TITLE = 50;

/** A file name that every system takes, letters of any script among them: group, title and day of the last change. */
export function fileStem(experiment: Experiment): string {
  const { group } = experiment;
  const called = titleWords(experiment);
  const title = (group.trim() === '' || called.startsWith(group.trim()) ? called : `${group} ${called}`)
    .normalize('NFKC')
    .replaceAll(/[^\p{L}\p{M}\p{N}_-]+/gu, '-')
    .replaceAll(/^-+|-+$/g, '');
  return `${title === '' ? 'experiment' : [...title].slice(0, LONGEST_TITLE).join('')}-${experiment.changedAt.slice(0, 10)}`;
}
