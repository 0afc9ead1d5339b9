/** The line in an experiment's note that tells of numbers outside of today's limits. */
export const mended = {
  note: (list: string) => `Outside of what this page works with: ${list}.`,
  /** What each quantity is called. */
  quantities: {
    'inside-diameter': 'inside diameter',
    'other-diameter': 'inside diameter at the other end',
    'longest-column': 'longest column',
    'reading-uncertainty': 'reading uncertainty',
    'fork-uncertainty': 'uncertainty',
    'measured-pitch': 'measured frequency or its uncertainty',
    temperature: 'air temperature',
    humidity: 'humidity',
    pressure: 'pressure',
    'carbon-dioxide': 'carbon dioxide',
    'temperature-uncertainty': 'uncertainty of the temperature',
    length: 'length',
    order: 'order',
    'heard-pitch': 'heard frequency or its uncertainty',
  },
  /** @param what  a quantity with its number, and what became of it */
  items: {
    forks: (number: number, what: string) => `fork ${number}: ${what}`,
    places: (number: number, what: string) => `place ${number}: ${what}`,
    marks: (number: number, what: string) => `mark ${number}: ${what}`,
    deletedMarks: (number: number, what: string) => `deleted mark ${number}: ${what}`,
  },
  leftOut: (quantity: string, value: string) => `${quantity} ${value} (left out)`,
  takenAs: (quantity: string, value: string, taken: string) => `${quantity} ${value} (taken as ${taken})`,
};
