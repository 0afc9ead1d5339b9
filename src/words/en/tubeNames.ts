/** What a tube is called among those of several experiments. */
export const tubeName = {
  atPlace: (experiment: string, place: string) => `${experiment}, ${place}`,
  /** Of several experiments with one title. */
  numbered: (name: string, number: number) => `${name} ${number}`,
};
