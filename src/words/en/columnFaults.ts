/** Readings that the rule's zero offset leaves no column, and what to do. All numbers in cm. */
export const columnFault = {
  mark: (number: number, { zeroOffset, reading, column, lowest, highest }: NoColumn) =>
    `With the zero offset of ${zeroOffset} cm mark ${number} at ${reading} cm would be a column of ${column} cm: readings must be ${lowest} cm to ${highest} cm. Correct the offset, or correct the mark’s length.`,
  deletedMark: ({ zeroOffset, reading, column, lowest, highest }: NoColumn) =>
    `With the zero offset of ${zeroOffset} cm the deleted mark at ${reading} cm would be a column of ${column} cm: readings must be ${lowest} cm to ${highest} cm. Correct the offset, or bring that mark back and correct its length.`,
  reading: ({ zeroOffset, reading, column, lowest, highest }: NoColumn) =>
    `With the zero offset of ${zeroOffset} cm a reading of ${reading} cm would be a column of ${column} cm: readings must be ${lowest} cm to ${highest} cm. Correct it, or the zero offset under Apparatus.`,
};

/** The lengths that are spoken of, as they are written. */
interface NoColumn {
  readonly zeroOffset: string;
  readonly reading: string;
  readonly column: string;
  /** Of what the rule may show. */
  readonly lowest: string;
  readonly highest: string;
}
