import type { MeasuredTube } from '../session/experiment/measuredTubes.ts';
import { laterWords } from './inUse.ts';
import { titleWords } from './titles.ts';

/** What each tube is called. Experiments may share a title: theirs are numbered, in the order given. */
export function tubeNames(tubes: readonly MeasuredTube[]): readonly string[] {
  const said = laterWords.tubeName;
  const names = tubes.map(({ of, placeLabel }) =>
    placeLabel === null ? titleWords(of) : said.atPlace(titleWords(of), placeLabel),
  );
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  const seen = new Map<string, number>();
  return names.map((name) => {
    if (counts.get(name) === 1) return name;
    const number = (seen.get(name) ?? 0) + 1;
    seen.set(name, number);
    return said.numbered(name, number);
  });
}
