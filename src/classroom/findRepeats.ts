import type { ClassGroup, GroupSource } from './classGroup.ts';

/** A group that is there already. */
export interface Repeat {
  /** Of the group that counts instead. */
  readonly of: string;
  readonly why: 'same marks' | 'earlier state of the same experiment' | 'same group again';
}

/**
 * Groups that are in the class more than once: the same marks or stated result twice, another state of the same
 * experiment, or the same name with other marks. Of each the latest counts, the others are repeats of it.
 * @returns repeats by the group's id
 */
export function findRepeats(groups: readonly ClassGroup[]): ReadonlyMap<string, Repeat> {
  const repeats = new Map<string, Repeat>();
  const note = (keyOf: (source: GroupSource) => string | null, why: Repeat['why']): void => {
    const latest = new Map<string, ClassGroup>();
    for (const group of groups) {
      if (repeats.has(group.id)) continue;
      const key = keyOf(group.source);
      if (key === null) continue;
      const other = latest.get(key);
      if (other === undefined) {
        latest.set(key, group);
        continue;
      }
      // Of equal age the one that came first stays.
      const isNewer = group.source.changedAt > other.source.changedAt;
      const [kept, left] = isNewer ? [group, other] : [other, group];
      latest.set(key, kept);
      repeats.set(left.id, { of: kept.id, why });
    }
  };
  // The reasons stand in the class's file as they are.
  note(marksKey, 'same marks');
  // eslint-disable-next-line bench/text-in-words
  note(({ experimentId }) => experimentId, 'earlier state of the same experiment');
  // eslint-disable-next-line bench/text-in-words
  note((source) => (source.isNamed ? plainName(source.name) : null), 'same group again');
  return repeats;
}

/** Marks as one text, whatever their order; null where there are none to compare. */
function marksKey({ marks, stated, name }: GroupSource): string | null {
  if (stated !== null) {
    return `${plainName(name)} ${stated.speedMps.toPrecision(10)} ${stated.standardUncertaintyMps.toPrecision(10)}`;
  }
  if (marks.length === 0) return null;
  return marks
    .map(
      ({ frequencyHz, ends, lengthM }) => `${frequencyHz.toPrecision(9)} ${ends} ${lengthM.toPrecision(9)}`,
    )
    .sort()
    .join('|');
}

/** "Group 4 (1)", as a browser names a second download, is group 4. */
function plainName(name: string): string {
  return name
    .toLowerCase()
    .replace(/( \(\d+\)| - copy| \(copy\))+$/, '')
    .replaceAll(/\s+/g, ' ')
    .trim();
}
