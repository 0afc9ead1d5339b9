/** The first entries of a long list, and how many more there are. */
export const listOfSome = (entries: string, more: number): string => `${entries}; and ${more} more`;
