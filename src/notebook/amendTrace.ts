import type { Experiment } from './experiment.ts';
import type { LevelStretch, Mark } from '../marks/mark.ts';

/** The state with the trace of one mark, deleted or not, completed; the same state where it holds no such mark. */
export function amendTrace(state: Experiment, id: string, trace: LevelStretch | null): Experiment {
  const has = (list: readonly Mark[]): boolean => list.some((mark) => mark.id === id);
  const amend = (list: readonly Mark[]): readonly Mark[] =>
    list.map((mark) =>
      mark.id === id && mark.evidence !== null ? { ...mark, evidence: { ...mark.evidence, trace } } : mark,
    );
  if (has(state.marks)) return { ...state, marks: amend(state.marks) };
  return has(state.deletedMarks) ? { ...state, deletedMarks: amend(state.deletedMarks) } : state;
}
