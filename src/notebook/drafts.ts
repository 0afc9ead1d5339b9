/** Where drafts lie: one text, so that several tabs can share it. Neither rejects nor throws. */
export interface DraftPlace {
  get(): string | null;
  set(text: string): void;
}

type AllDrafts = Record<string, Record<string, string>>;

/** Of so many experiments; those that were typed into longest ago go first. */
const MOST_EXPERIMENTS = 50;
/** A pasted table of a few thousand rows. */
const LONGEST_DRAFT = 200_000;

/**
 * What was typed into the page's fields and not taken yet, by experiment and field, over a reload and until it is
 * taken: a half-typed length must neither become a result nor be lost.
 */
export class Drafts {
  constructor(private readonly place: DraftPlace) {}

  /** Null where nothing waits. */
  get(experimentId: string, field: string): string | null {
    const fields = ownOf(this.all(), experimentId);
    return fields === undefined ? null : (ownOf(fields, field) ?? null);
  }

  /** Keeps this text; null takes it out. Longer texts than a field takes aren't kept. */
  set(experimentId: string, field: string, text: string | null): void {
    const all = this.all();
    const own = ownOf(all, experimentId) ?? {};
    if (text === null && !Object.hasOwn(own, field)) return;
    const isKept = text !== null && text.length <= LONGEST_DRAFT;
    const fields = { ...without(own, field), ...(isKept ? { [field]: text } : {}) };
    const others = without(all, experimentId);
    this.write(Object.keys(fields).length === 0 ? others : { ...others, [experimentId]: fields });
  }

  /** All of an experiment that is no more. */
  forget(experimentId: string): void {
    const all = this.all();
    if (Object.hasOwn(all, experimentId)) this.write(without(all, experimentId));
  }

  /** Read anew each time: another tab may have written. What isn't understood counts as nothing. */
  private all(): AllDrafts {
    try {
      const value: unknown = JSON.parse(this.place.get() ?? '{}');
      return isDrafts(value) ? value : {};
    } catch {
      return {};
    }
  }

  private write(drafts: AllDrafts): void {
    // What was typed into last stands last.
    this.place.set(JSON.stringify(Object.fromEntries(Object.entries(drafts).slice(-MOST_EXPERIMENTS))));
  }
}

/** Ids and names of fields come from files, too: what every object has doesn't count. */
function ownOf<T>(record: Readonly<Record<string, T>>, name: string): T | undefined {
  return Object.hasOwn(record, name) ? record[name] : undefined;
}

function without<T>(record: Readonly<Record<string, T>>, name: string): Record<string, T> {
  return Object.fromEntries(Object.entries(record).filter(([key]) => key !== name));
}

function isDrafts(value: unknown): value is AllDrafts {
  const isRecord = (one: unknown): one is object =>
    typeof one === 'object' && one !== null && !Array.isArray(one);
  return (
    isRecord(value) &&
    Object.values(value).every(
      (fields: unknown) =>
        isRecord(fields) && Object.values(fields).every((text) => typeof text === 'string'),
    )
  );
}
