import type { Intake } from '../intake/intakeTypes.ts';
import type { ClassGroup } from './classGroup.ts';
import { classResult } from './classResult.ts';
import type { ClassResult } from './classResult.ts';
import { groupsOfIntake } from './groupsOfIntake.ts';
import { solveGroup } from './solveGroup.ts';

/** Work between two looks at what else the page has to do, ms. */
const WORK_MS = 12;

/** What the desk needs from outside. */
export interface DeskOutside {
  /** Milliseconds that only grow. */
  now(): number;
  /** Settles when the page has had its turn. */
  pause(): Promise<void>;
}

/** The groups of a class while the page is open. Nothing of it is stored: the groups' files are. */
export class ClassDesk {
  private list: readonly ClassGroup[] = [];
  private solved: { readonly list: readonly ClassGroup[]; readonly result: ClassResult } | null = null;
  private count = 0;
  private readonly watchers = new Set<() => void>();

  constructor(private readonly outside: DeskOutside) {}

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

  /** Counts a group or leaves it out, whatever the bench thinks of it. */
  choose(id: string, isChosen: boolean): void {
    this.set(this.list.map((group) => (group.id === id ? { ...group, isChosen } : group)));
  }

  clear(): void {
    this.set([]);
  }

  private set(list: readonly ClassGroup[]): void {
    this.list = list;
    for (const callback of this.watchers) callback();
  }
}
