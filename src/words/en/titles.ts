/** What an experiment is called that nobody named, and a copy of one. */
export const experimentTitle = {
  kinds: { experiment: 'Experiment', lesson: 'Lesson' },
  numbered: (title: string, number: number) => `${title} ${number}`,
  copy: (title: string) => `${title} (copy)`,
  numberedCopy: (title: string, number: number) => `${title} (copy ${number})`,
};
