import type { Mark } from '../marks/mark.ts';
import { markNumber, repeatedMark } from '../notebook/markList.ts';
import type { Experiment } from '../notebook/experiment.ts';
import { plainFixed } from './numbers.ts';

/*
 * Labels inside a recording are read again when it is opened, by a page in any language: they are the same in all, as
 * the keys of a file are, in plain ASCII and with a decimal point.
 */

/** What a sound editor shows beside a mark: its number, fork, ends and length. */
export function cueLabel(experiment: Experiment, mark: Mark): string {
  const { marks } = experiment;
  const number = markNumber(experiment, mark.id);
  const fork = experiment.forks.find((candidate) => candidate.id === mark.forkId);
  const frequency = fork === undefined ? '' : `, ${stamp(fork.nominalHz)} Hz`;
  // Without the length, which would count twice when the file is opened again.
  if (repeatedMark(marks, mark) !== null) return `Mark ${number} again${frequency}, ${mark.ends}`;
  const length = mark.lengthM === null ? 'no length yet' : `${plainFixed(mark.lengthM * 100, 2)} cm`;
  const located = mark.locatedBy === 'centre' ? ' at the centre' : '';
  return `Mark ${number}${frequency}, ${mark.ends}, ${length}${located}`;
}

/** A fork's frequency as it is stamped, whole or with one decimal. */
function stamp(nominalHz: number): string {
  return plainFixed(nominalHz, nominalHz % 1 === 0 ? 0 : 1);
}

/** What a sound editor shows where a mark's resonance had its centre; null where that isn't known. */
export function centreCueLabel(experiment: Experiment, mark: Mark): string | null {
  const centre = mark.evidence?.centre ?? null;
  if (centre === null) return null;
  const { standardUncertaintyHalfWidths: half, shareRe, shareIm } = centre;
  const parts = [half, shareRe, shareIm].map((value) => Number(value.toPrecision(6)));
  return `Centre of mark ${markNumber(experiment, mark.id)}, half widths ${parts[0]}, share ${parts[1]} ${parts[2]}`;
}
