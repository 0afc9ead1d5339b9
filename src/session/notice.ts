import type { Experiment } from '../notebook/experiment.ts';

/** Something to be shown and announced: `serial` grows so that the same words are announced again. */
export interface Notice {
  readonly serial: number;
  readonly kind: 'info' | 'problem';
  readonly message: string;
  /** Whether it still is true of the experiment; it goes as soon as it isn't. Without it, it holds. */
  readonly holds?: (experiment: Experiment) => boolean;
}

/** Shows a message and has it announced. @param holds  as `Notice.holds` */
export type Tell = (kind: Notice['kind'], message: string, holds?: Notice['holds']) => void;
