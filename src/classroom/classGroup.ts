import type { StatedResult } from '../intake/intakeTypes.ts';
import type { AirState } from '../air/airState.ts';
import type { OutlierCause } from '../solver/outlierCause.ts';
import type { SolverMark } from '../solver/solution.ts';
import type { SolverWarning } from '../solver/solverWarning.ts';

/** What one group brought: marks, or a result that it states. */
export interface GroupSource {
  /** The group's own name: a title, a name in a table, else the file's name. */
  readonly name: string;
  /** Whether somebody named the group; a default title says nothing. */
  readonly isNamed: boolean;
  readonly fileName: string;
  /** null for what is no experiment's file. */
  readonly experimentId: string | null;
  /** ISO 8601; '' where it isn't known. */
  readonly changedAt: string;
  /** Marks that count, empty where only a result is stated. */
  readonly marks: readonly SolverMark[];
  /** What the group numbers, and the number of each mark by its key: rows of a table, or marks of an experiment. */
  readonly numbered: 'row' | 'mark';
  readonly markNumbers: ReadonlyMap<string, number>;
  readonly stated: StatedResult | null;
}

/** A group's own result. */
export interface GroupOutcome {
  readonly speedMps: number;
  readonly standardUncertaintyMps: number;
  /** null where no temperature was noted. */
  readonly air: AirState | null;
  readonly markCount: number;
  /** Marks that are wrong already in its own eyes. */
  readonly outliers: readonly { readonly key: string; readonly cause: OutlierCause }[];
  /** What the solver doubts of its marks as they are noted: units, ends, a rule's zero. */
  readonly warnings: readonly SolverWarning[];
}

/** A group in the class, solved. */
export interface ClassGroup {
  /** Unique in the class. */
  readonly id: string;
  readonly source: GroupSource;
  /** null where its marks give no speed; `problems` say why. */
  readonly outcome: GroupOutcome | null;
  readonly problems: readonly SolverWarning[];
  /** What the teacher chose; null leaves it to the bench. */
  readonly isChosen: boolean | null;
}
