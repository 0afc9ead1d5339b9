import type { Intake } from '../intake/intakeTypes.ts';
import type { Experiment } from '../notebook/experiment.ts';
import type { GroupPart } from '../notebook/groupLink.ts';
import type { ClassGroup } from './classGroup.ts';
import { classResult } from './classResult.ts';
import type { ClassResult } from './classResult.ts';
import { groupsOfIntake } from './groupsOfIntake.ts';
import { groupNameWords } from '../words/namelessGroup.ts';
import { isSameState } from './findRepeats.ts';
import { classText, readClassText } from './keptClass.ts';
import { solveGroup } from './solveGroup.ts';

/** Work between two looks at what else the page has to do, ms. */
const WORK_MS = 12;

/** What the desk needs from outside. */
export interface DeskOutside {
  /** Milliseconds that only grow. */
  now(): number;
  /** Settles when the page has had its turn. */
  pause(): Promise<void>;
  /** Where the class waits on this device until it is emptied. */
  readonly kept: { get(): string | null; set(text: string): void; clear(): void };
}

/** What became of a group that came: a new one, one that is there just so, or a newer or older state of one. */
export interface TakenGroup {
  readonly name: string;
  readonly as: 'new' | 'there' | 'newer' | 'older';
}

/** The groups of a class. They stay on this device, and nowhere else, until they are emptied. */
export class ClassDesk {
  private list: readonly ClassGroup[] = [];
  private solved: { readonly list: readonly ClassGroup[]; readonly result: ClassResult } | null = null;
  private count = 0;
  private parts: readonly GroupPart[] = [];
  private readonly watchers = new Set<() => void>();

  constructor(private readonly outside: DeskOutside) {
    this.bringBack();
  }

  /** Takes what is kept on this device: at the beginning, and when another tab has added to it. */
  bringBack(): void {
    const { groups, parts } = readClassText(this.outside.kept.get());
    this.count = groups.length;
    this.parts = parts;
    this.list = groups;
    this.announce();
  }

  get groups(): readonly ClassGroup[] {
    return this.list;
  }

  /** Pooled when first asked for after a change. */
  get result(): ClassResult {
    if (this.solved?.list !== this.list) this.solved = { list: this.list, result: classResult(this.list) };
    return this.solved.result;
  }

  /** @returns what ends the watching */
  watch(callback: () => void): () => void {
    this.watchers.add(callback);
    return () => this.watchers.delete(callback);
  }

  /** Takes in what was read, solving group by group with pauses. @returns how many groups were added */
  async add(intakes: readonly Intake[]): Promise<number> {
    // Table 2 before table 10, a file before its second download, whatever order they come in.
    const inOrder = new Intl.Collator('en', { numeric: true });
    const stem = ({ name }: Intake): string => name.replace(/\.\w+$/, '');
    const sorted = [...intakes].sort((one, other) => inOrder.compare(stem(one), stem(other)));
    const sources = sorted.flatMap(groupsOfIntake);
    const fresh: ClassGroup[] = [];
    let restedMs = this.outside.now();
    for (const source of sources) {
      this.count += 1;
      fresh.push(solveGroup(`group-${this.count}`, source));
      if (this.outside.now() - restedMs < WORK_MS) continue;
      await this.outside.pause();
      restedMs = this.outside.now();
    }
    this.set([...this.list, ...fresh]);
    return fresh.length;
  }

  /** Takes one group's result as its code or link brought it. One that is there just so is not taken twice. */
  async addOne(experiment: Experiment): Promise<TakenGroup> {
    const name = groupNameWords(experiment.group);
    const intake: Intake = { name, content: { kind: 'experiment', experiment }, faults: [], remarks: [] };
    const [source] = groupsOfIntake(intake);
    if (source !== undefined && this.list.some((group) => isSameState(group.source, source))) {
      return { name, as: 'there' };
    }
    await this.add([intake]);
    const added = this.list.at(-1)?.id;
    const { rows } = this.result;
    const isOlder = rows.some(({ group, repeat }) => group.id === added && repeat !== null);
    const isNewer = rows.some(({ repeat }) => repeat?.of === added);
    return { name, as: isOlder ? 'older' : isNewer ? 'newer' : 'new' };
  }

  /** Keeps one of several codes. @returns all that are there of the same result */
  addPart(part: GroupPart): readonly GroupPart[] {
    const isSame = (other: GroupPart): boolean => other.of === part.of && other.number === part.number;
    this.parts = [...this.parts.filter((other) => !isSame(other)), part];
    this.keep();
    return this.parts.filter(({ of }) => of === part.of);
  }

  /** The result is whole: its codes are done with. */
  dropParts(id: string): void {
    this.parts = this.parts.filter(({ of }) => of !== id);
    this.keep();
  }

  /** Counts a group or leaves it out, whatever the bench thinks of it. */
  choose(id: string, isChosen: boolean): void {
    this.set(this.list.map((group) => (group.id === id ? { ...group, isChosen } : group)));
  }

  clear(): void {
    this.parts = [];
    this.set([]);
    this.outside.kept.clear();
  }

  private set(list: readonly ClassGroup[]): void {
    this.list = list;
    this.keep();
    this.announce();
  }

  private keep(): void {
    this.outside.kept.set(classText({ groups: this.list, parts: this.parts }));
  }

  private announce(): void {
    for (const callback of this.watchers) callback();
  }
}
