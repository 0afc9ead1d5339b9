import type { GroupPart } from '../notebook/groupLink.ts';
import type { SolverMark } from '../solver/solution.ts';
import type { ClassGroup, GroupSource } from './classGroup.ts';
import { solveGroup } from './solveGroup.ts';

/** Form of what is kept: another form gets another number, and what was kept in the old one is left out. */
const VERSION = 1;

/** A class as it was left on this device. */
export interface KeptClass {
  readonly groups: readonly ClassGroup[];
  /** Codes of results of which others are still missing. */
  readonly parts: readonly GroupPart[];
}

/** The class as text, for this device alone. */
export function classText({ groups, parts }: KeptClass): string {
  return JSON.stringify({
    version: VERSION,
    groups: groups.map(({ source, isChosen }) => ({
      source: { ...source, markNumbers: [...source.markNumbers] },
      isChosen,
    })),
    parts,
  });
}

/** Reads it back, solving anew. What can't be read is left out: the groups' files and codes are still there. */
export function readClassText(text: string | null): KeptClass {
  try {
    const kept = JSON.parse(text ?? 'null') as Stored | null;
    if (kept?.version !== VERSION) return { groups: [], parts: [] };
    const groups = kept.groups.flatMap(({ source, isChosen }, index): ClassGroup[] => {
      try {
        const whole = {
          ...source,
          marks: withSharedAir(source.marks),
          markNumbers: new Map(source.markNumbers),
        };
        return [{ ...solveGroup(`group-${index + 1}`, whole), isChosen }];
      } catch {
        return [];
      }
    });
    return { groups, parts: kept.parts };
  } catch {
    return { groups: [], parts: [] };
  }
}

interface Stored {
  readonly version: number;
  readonly groups: readonly {
    readonly source: Omit<GroupSource, 'markNumbers'> & { readonly markNumbers: readonly [string, number][] };
    readonly isChosen: boolean | null;
  }[];
  readonly parts: readonly GroupPart[];
}

/** Marks of one place share its air as one object: the solver takes air that is told twice for two airs. */
function withSharedAir(marks: readonly SolverMark[]): readonly SolverMark[] {
  const known = new Map<string, SolverMark['air']>();
  return marks.map((mark) => {
    const text = JSON.stringify(mark.air);
    const air = known.get(text) ?? mark.air;
    known.set(text, air);
    return { ...mark, air };
  });
}
