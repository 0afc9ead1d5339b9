/** Something to be shown and announced: `serial` grows so that the same words are announced again. */
export interface Notice {
  readonly serial: number;
  readonly kind: 'info' | 'problem';
  readonly message: string;
}

/** Shows a message and has it announced. */
export type Tell = (kind: Notice['kind'], message: string) => void;
