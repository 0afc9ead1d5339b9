import type { Titled } from '../notebook/experiment.ts';

const KINDS = { experiment: 'Experiment', lesson: 'Lesson' } as const;

/** What an experiment is called: its title, else its group, else what it is; and whether it is a copy. */
export function titleWords({ title, group = '', origin: { kind, number, copy } }: Titled): string {
  const given = group.trim() === '' ? KINDS[kind] : group.trim();
  const own = title.trim() !== '' ? title : number === 1 ? given : `${given} ${number}`;
  return copy === 0 ? own : copy === 1 ? `${own} (copy)` : `${own} (copy ${copy})`;
}
