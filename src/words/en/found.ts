/** What stands in a record where something else belongs. */
export const found = {
  missing: 'missing',
  list: (length: number) => `a list of ${length}`,
  object: 'an object',
  /** @param type  as the language of programs calls it */
  other: (type: string) => `a ${type}`,
};
