import type { Titled } from '../notebook/experiment.ts';

const KINDS = { experiment: 'Experiment', lesson: 'Lesson' } as const;

/** What an experiment is called: its title, or what it is where nobody gave it one, and whether it is a copy. */
export function titleWords({ title, origin: { kind, number, copy } }: Titled): string {
  const own = title.trim() !== '' ? title : number === 1 ? KINDS[kind] : `${KINDS[kind]} ${number}`;
  return copy === 0 ? own : copy === 1 ? `${own} (copy)` : `${own} (copy ${copy})`;
}
