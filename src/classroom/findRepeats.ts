import type { ClassGroup, GroupSource } from './classGroup.ts';

/** A group that is there already. */
export interface Repeat {
  /** Of the group that counts instead. */
  readonly of: string;
  readonly why: 'same marks' | 'earlier state of the same experiment' | 'same group again';
}

/**
 * Groups that are in the class more than once: the same marks or stated result twice, another state of the same
 * experiment, or the same name with other marks. Of each the latest counts, the others are repeats of it. Groups that
 * all began from one file share its id alone: without a mark in common, or under names of their own, they are several.
 * @returns repeats by the group's id
 */
export function findRepeats(groups: readonly ClassGroup[]): ReadonlyMap<string, Repeat> {
  const repeats = new Map<string, Repeat>();
  const note = (
    keyOf: (source: GroupSource) => string | null,
    why: Repeat['why'],
    isSame: (one: GroupSource, other: GroupSource) => boolean,
  ): void => {
    const kept = new Map<string, ClassGroup[]>();
    for (const group of groups) {
      if (repeats.has(group.id)) continue;
      const key = keyOf(group.source);
      if (key === null) continue;
      const others = kept.get(key) ?? [];
      kept.set(key, others);
      const at = others.findIndex((other) => isSame(group.source, other.source));
      const other = others[at];
      if (other === undefined) {
        others.push(group);
        continue;
      }
      // Of equal age the one that came first stays.
      const isNewer = group.source.changedAt > other.source.changedAt;
      const [stays, left] = isNewer ? [group, other] : [other, group];
      others[at] = stays;
      repeats.set(left.id, { of: stays.id, why });
    }
  };
  // The reasons stand in the class's file as they are.
  note(marksKey, 'same marks', () => true);
  // eslint-disable-next-line bench/text-in-words
  note(({ experimentId }) => experimentId, 'earlier state of the same experiment', isState);
  // eslint-disable-next-line bench/text-in-words
  note((source) => (source.isNamed ? plainName(source.name) : null), 'same group again', isOneGroup);
  return repeats;
}

/** Whether both are the very same state of one group's experiment, whichever way it came. */
export function isSameState(one: GroupSource, other: GroupSource): boolean {
  const seconds = ({ changedAt }: GroupSource): string => changedAt.slice(0, 'YYYY-MM-DDThh:mm:ss'.length);
  return (
    one.experimentId !== null &&
    one.experimentId === other.experimentId &&
    one.name === other.name &&
    seconds(one) === seconds(other) &&
    marksKey(one) === marksKey(other)
  );
}

/** Whether one is another state of what the other holds, and not another group's that began from the same file. */
function isState(one: GroupSource, other: GroupSource): boolean {
  const areNamed = one.isNamed && other.isNamed;
  if (areNamed && plainName(one.name) !== plainName(other.name)) return false;
  const marks = new Set(one.marks.map(markKey));
  return other.marks.length === 0 || marks.size === 0 || other.marks.some((mark) => marks.has(markKey(mark)));
}

/** Groups of one name are one group, unless the name came with the file that they all began from. */
function isOneGroup(one: GroupSource, other: GroupSource): boolean {
  const isFromOneFile = one.experimentId !== null && one.experimentId === other.experimentId;
  return !isFromOneFile || isState(one, other);
}

function markKey({ frequencyHz, ends, lengthM }: GroupSource['marks'][number]): string {
  return `${frequencyHz.toPrecision(9)} ${ends} ${lengthM.toPrecision(9)}`;
}

/** Marks as one text, whatever their order; null where there are none to compare. */
function marksKey({ marks, stated, name }: GroupSource): string | null {
  if (stated !== null) {
    return `${plainName(name)} ${stated.speedMps.toPrecision(10)} ${stated.standardUncertaintyMps.toPrecision(10)}`;
  }
  if (marks.length === 0) return null;
  return marks.map(markKey).sort().join('|');
}

/** "Group 4 (1)", as a browser names a second download, is group 4. */
function plainName(name: string): string {
  return name
    .toLowerCase()
    .replace(/( \(\d+\)| - copy| \(copy\))+$/, '')
    .replaceAll(/\s+/g, ' ')
    .trim();
}
