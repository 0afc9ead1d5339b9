import type { Experiment } from '../../notebook/experiment.ts';
import type { Cell } from '../csv.ts';

const HEADING = ['mark', 'time_s', 'tone_db', 'room_db', 'rise_db'] as const;

/**
 * The level trace kept around each mark, one row a point, the heading first. 0 dB is a sine of amplitude 1; a tone that
 * isn't heard above the noise leaves its cell empty.
 */
export function traceRows(experiment: Experiment): readonly (readonly Cell[])[] {
  const rows = experiment.marks.flatMap((mark, index) => {
    const trace = mark.evidence?.trace ?? null;
    if (trace === null) return [];
    return trace.roomDb.map((roomDb, point): readonly Cell[] => {
      const toneDb = trace.toneDb[point] ?? null;
      const riseDb = toneDb === null ? null : toneDb - roomDb;
      return [index + 1, trace.startS + point * trace.stepS, toneDb, roomDb, riseDb];
    });
  });
  return [HEADING, ...rows];
}
