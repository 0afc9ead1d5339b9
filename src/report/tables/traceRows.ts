import { markIndex } from '../../notebook/markList.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import type { Cell } from '../csv.ts';

const HEADING = ['mark', 'passage', 'time_s', 'tone_db', 'room_db', 'rise_db'] as const;

/**
 * The level trace kept around each mark, one row a point, the heading first. 0 dB is a sine of amplitude 1; a tone that
 * isn't heard above the noise leaves its cell empty. `passage` counts how often the mark's resonance was passed.
 */
export function traceRows(experiment: Experiment): readonly (readonly Cell[])[] {
  const { marks } = experiment;
  const index = markIndex(experiment);
  const rows = marks.flatMap((mark) => {
    const trace = mark.evidence?.trace ?? null;
    if (trace === null) return [];
    const number = index.numberOf(mark.id);
    const own = index.repeated(mark);
    const passage = own === null ? 1 : index.repeatsOf(own).indexOf(mark) + 2;
    return trace.roomDb.map((roomDb, point): readonly Cell[] => {
      const toneDb = trace.toneDb[point] ?? null;
      const riseDb = toneDb === null ? null : toneDb - roomDb;
      return [number, passage, trace.startS + point * trace.stepS, toneDb, roomDb, riseDb];
    });
  });
  return [HEADING, ...rows];
}
