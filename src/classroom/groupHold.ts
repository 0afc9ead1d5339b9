import type { SolverMark } from '../solver/solution.ts';
import type { SolverWarning } from '../solver/solverWarning.ts';
import type { ClassGroup } from './classGroup.ts';

/** Why a group isn't counted before somebody has looked at its numbers. */
export interface GroupHold {
  /** Its longest column, m, where no school's tube is so long; null where it is usual. */
  readonly longestM: number | null;
  /** What its own marks say against its result. */
  readonly warnings: readonly SolverWarning[];
  /** Whether it is about the unit of the lengths: they then say nothing of the rule, the ends or the fork. */
  readonly isOfUnit: boolean;
}

/** Longer columns stand in few schools, m (common practice, no source). */
const LONGEST_USUAL_M = 2;
/** Theory gives 0.6 to 0.82 radii; a fork close to the mouth adds some. What is beyond this is the rule's. */
const HIGHEST_END_RATIO = 1.5;
/** The same where no diameter is known: of a tube 67 mm wide, m. */
const HIGHEST_END_M = 0.05;
/** Numbers as noted are believed less than this where another unit explains them. */
const HARDLY_BELIEVED = 0.05;

/**
 * Whether a group's own numbers say that it should not count unseen: columns of metres, another unit, other ends, a
 * rule's zero off by centimetres, marks that contradict each other. How its speed compares with theory or with the
 * class is no reason: that would make the mean from what was expected of it.
 * @returns null where nothing holds it out
 */
export function groupHold({ source, outcome }: Pick<ClassGroup, 'source' | 'outcome'>): GroupHold | null {
  if (outcome === null) return null;
  const longestM = Math.max(0, ...source.marks.map(({ lengthM }: SolverMark) => lengthM));
  const warnings = outcome.warnings.filter(isSevere);
  const isLong = longestM > LONGEST_USUAL_M;
  if (!isLong && warnings.length === 0) return null;
  return {
    longestM: isLong ? longestM : null,
    warnings,
    isOfUnit: isLong || warnings.some(({ code }) => code === 'length-unit' || code === 'other-explanation'),
  };
}

function isSevere(warning: SolverWarning): boolean {
  switch (warning.code) {
    case 'nothing-fits':
    case 'column-type':
    case 'length-unit':
    case 'inconsistent':
      return true;
    case 'other-explanation':
      // Another fork shows against the class, which knows what others used.
      return warning.explanations.at(0)?.kind === 'unit' && warning.shareAsNoted < HARDLY_BELIEVED;
    case 'end-correction-implausible': {
      const { endCorrectionM, endCorrectionRatio } = warning;
      const isHigh =
        endCorrectionRatio === null ? endCorrectionM > HIGHEST_END_M : endCorrectionRatio > HIGHEST_END_RATIO;
      return endCorrectionM < 0 || isHigh;
    }
    default:
      return false;
  }
}
