import type { Filling } from '../air/gases.ts';
import type { MouthShape } from '../air/mouth.ts';
import type { ColumnEnds, Mark } from '../marks/mark.ts';

/** Version of the records written today; `migrateExperiment` brings earlier ones up to it. */
export const SCHEMA_VERSION = 5;

/** Everything of one experiment that is kept. SI units; ids are unique within the experiment. */
export interface Experiment extends Titled {
  readonly schemaVersion: typeof SCHEMA_VERSION;
  readonly id: string;
  readonly createdAt: string;
  readonly changedAt: string;
  readonly forks: readonly Fork[];
  readonly places: readonly Place[];
  readonly tube: Tube;
  readonly rule: Rule;
  /** What is being measured now. */
  readonly present: { readonly forkId: string; readonly placeId: string; readonly ends: ColumnEnds };
  readonly marks: readonly Mark[];
  /** Deleted marks, newest last, so that each can come back. */
  readonly deletedMarks: readonly Mark[];
  readonly note: string;
  readonly group: string;
  /** The class that the group belongs to; empty where nobody said. */
  readonly className: string;
  /** What a teacher's lesson link set; absent where there was none. */
  readonly lesson?: Lesson;
  /** The last gain check; absent where none was made. */
  readonly gainCheck?: GainCheckRecord;
}

/** What an experiment is called by: `words/titles.ts` makes its name of it. */
export interface Titled {
  /** As somebody typed it, or as the file was called that it came from; empty where nobody named it. */
  readonly title: string;
  /** What the group calls itself; absent or empty where nobody said. */
  readonly group?: string;
  readonly origin: Origin;
}

/** How an experiment came about. */
export interface Origin {
  readonly kind: 'experiment' | 'lesson';
  /** Tells new ones that nobody named apart, from 1. */
  readonly number: number;
  /** 0: no copy. A copy of the n-th copy is n + 1. */
  readonly copy: number;
}

/** What a gain check found: does something rewrite the level on its way from the microphone? */
export interface GainCheckRecord {
  readonly checkedAt: string;
  readonly verdict: 'steady' | 'rewritten';
  /** How far the fork's level lay from a smooth decay while somebody talked, dB, and the limit it was judged by. */
  readonly departureDb: number;
  readonly limitDb: number;
  /** The microphone's name as the browser gives it; null where it gives none. */
  readonly device: string | null;
}

/** What a lesson asks for and what it keeps back. */
export interface Lesson {
  readonly task: string;
  /** Places where a resonance may be expected, the standing wave with them. */
  readonly hideExpected: boolean;
  /** Theory's speed and the difference from it. */
  readonly hideTheory: boolean;
  /** The practice column's truth. */
  readonly hideTruth: boolean;
  /** Tells lessons apart; absent in those of before. */
  readonly id?: string;
  /** Digest of the code that shows what is kept back; absent where no code does. */
  readonly reveal?: string;
  /** Language that the lesson is held in, as BCP 47 names it; absent where nobody said. */
  readonly language?: string;
}

export interface Fork {
  readonly id: string;
  readonly nominalHz: number;
  /** Standard uncertainty of the pitch where it isn't measured, Hz. */
  readonly standardUncertaintyHz: number;
  /** Measured pitch that replaces the stamp in the fit; null: use the stamp. */
  readonly measuredHz: number | null;
  readonly measuredStandardUncertaintyHz: number | null;
}

export interface Place {
  readonly id: string;
  readonly name: string;
  /** null where it wasn't read. */
  readonly temperatureC: number | null;
  readonly temperatureStandardUncertaintyC: number;
  readonly humidityPct: number | null;
  readonly pressurePa: number | null;
  /** What the tube is filled with there. */
  readonly filling: Filling;
  /** Of carbon dioxide in the air; null where it wasn't read. */
  readonly co2MoleFraction: number | null;
}

/**
 * What closes a closed column: a piston that slides, water in which the tube is raised and lowered, or water that rises
 * and falls in it.
 */
export const STOPPERS = ['piston', 'dipped', 'filled'] as const;

export type Stopper = (typeof STOPPERS)[number];

export interface Tube {
  /** Inside diameter; null where it wasn't measured. */
  readonly diameterM: number | null;
  /** The same at the other open end of a telescoping tube; null: no different. Closed columns have no such end. */
  readonly otherDiameterM: number | null;
  /** What its open ends look like; null: not described. */
  readonly mouth: MouthShape | null;
  /** How a closed column's length is changed: decides the words of the way back alone. */
  readonly stopper: Stopper;
  /** Longest column that the tube allows, m. */
  readonly travelM: number;
}

export interface Rule {
  /** Standard uncertainty of one reading, the hand's search for the place included, m; null: nobody stated it. */
  readonly readingStandardUncertaintyM: number | null;
  /** Reading at zero column length, m: taken off every length. */
  readonly zeroOffsetM: number;
}
