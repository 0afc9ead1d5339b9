import type { Mark } from '../marks/mark.ts';
import { markNumber, repeatedMark } from '../notebook/markList.ts';
import type { Experiment } from '../notebook/experiment.ts';
import { words } from './inUse.ts';
import { fixed, stampedHertz } from './numbers.ts';

/** What a sound editor shows beside a mark: its number, fork, ends and length. Plain ASCII, as the file format wants. */
export function cueLabel(experiment: Experiment, mark: Mark): string {
  const { marks } = experiment;
  const number = markNumber(experiment, mark.id);
  const fork = experiment.forks.find((candidate) => candidate.id === mark.forkId);
  const pitch = fork === undefined ? '' : `, ${stampedHertz(fork.nominalHz)} Hz`;
  const ends = words.endsShort[mark.ends];
  // Without the length, which would count twice when the file is opened again.
  if (repeatedMark(marks, mark) !== null) return `Mark ${number} again${pitch}, ${ends}`;
  const length = mark.lengthM === null ? 'no length yet' : `${fixed(mark.lengthM * 100, 2)} cm`;
  const located = mark.locatedBy === 'centre' ? ' at the centre' : '';
  return `Mark ${number}${pitch}, ${ends}, ${length}${located}`;
}

/** What a sound editor shows where a mark's resonance had its centre; null where that isn't known. */
export function centreCueLabel(experiment: Experiment, mark: Mark): string | null {
  const centre = mark.evidence?.centre ?? null;
  if (centre === null) return null;
  const { standardUncertaintyHalfWidths: half, shareRe, shareIm } = centre;
  const parts = [half, shareRe, shareIm].map((value) => Number(value.toPrecision(6)));
  return `Centre of mark ${markNumber(experiment, mark.id)}, half widths ${parts[0]}, share ${parts[1]} ${parts[2]}`;
}
