import type { Titled } from '../notebook/experiment.ts';
import { words } from './inUse.ts';

/** What an experiment is called: its title, else its group, else what it is; and whether it is a copy. */
export function titleWords({ title, group = '', origin: { kind, number, copy } }: Titled): string {
  const said = words.experimentTitle;
  const given = group.trim() === '' ? said.kinds[kind] : group.trim();
  const own = title.trim() !== '' ? title : number === 1 ? given : said.numbered(given, number);
  return copy === 0 ? own : copy === 1 ? said.copy(own) : said.numberedCopy(own, copy);
}
