import { foundWords } from './foundWords.ts';

/**
 * Walks through an untrusted JSON value field by field. Each fault is noted with its path and a harmless
 * stand-in is returned, so that one pass finds every fault. The faults' list is shared with all children.
 */
export class RecordReader {
  private readonly fields: Readonly<Record<string, unknown>>;
  readonly isObject: boolean;
  /** The object that is read; null where it is none. */
  readonly source: object | null;

  constructor(
    private readonly path: string,
    value: unknown,
    readonly faults: string[],
  ) {
    this.isObject = typeof value === 'object' && value !== null && !Array.isArray(value);
    this.source = this.isObject ? (value as object) : null;
    this.fields = this.isObject ? (value as Record<string, unknown>) : {};
    if (!this.isObject && path !== '') this.fault('', 'must be an object', value);
  }

  /** The field as it stands; undefined where it is missing or inherited. */
  raw(name: string): unknown {
    return Object.hasOwn(this.fields, name) ? this.fields[name] : undefined;
  }

  text(name: string, longest: number): string {
    const value = this.raw(name);
    if (typeof value === 'string' && value.length <= longest) return value;
    return this.fault(name, `must be text of at most ${longest} characters`, value, '');
  }

  number(name: string, min: number, max: number): number {
    const value = this.raw(name);
    if (typeof value === 'number' && value >= min && value <= max) return value;
    return this.fault(name, `must be a number from ${min} to ${max}`, value, min);
  }

  numberOrNull(name: string, min: number, max: number): number | null {
    return this.raw(name) === null ? null : this.number(name, min, max);
  }

  wholeOrNull(name: string, min: number, max: number): number | null {
    const value = this.numberOrNull(name, min, max);
    if (value === null || Number.isInteger(value)) return value;
    return this.fault(name, 'must be a whole number', value, min);
  }

  flag(name: string): boolean {
    const value = this.raw(name);
    return typeof value === 'boolean' ? value : this.fault(name, 'must be true or false', value, false);
  }

  choice<T extends string>(name: string, choices: readonly T[]): T {
    const value = this.raw(name);
    const found = choices.find((choice) => choice === value);
    return found ?? this.fault(name, `must be one of ${choices.join(', ')}`, value, choices.at(0));
  }

  child(name: string): RecordReader {
    return new RecordReader(this.pathTo(name), this.raw(name), this.faults);
  }

  childOrNull(name: string): RecordReader | null {
    return this.raw(name) === null ? null : this.child(name);
  }

  list(name: string, longest: number): readonly RecordReader[] {
    const value = this.raw(name);
    if (!Array.isArray(value) || value.length > longest) {
      return this.fault(name, `must be a list of at most ${longest}`, value, []);
    }
    return value.map((item, index) => new RecordReader(`${this.pathTo(name)}[${index}]`, item, this.faults));
  }

  /** A list of numbers; `mayBeNull` also takes null in place of a number. */
  numbers(name: string, longest: number, min: number, max: number): readonly number[];
  numbers(
    name: string,
    longest: number,
    min: number,
    max: number,
    mayBeNull: true,
  ): readonly (number | null)[];
  numbers(
    name: string,
    longest: number,
    min: number,
    max: number,
    mayBeNull = false,
  ): readonly (number | null)[] {
    const value = this.raw(name);
    if (!Array.isArray(value) || value.length > longest) {
      return this.fault(name, `must be a list of at most ${longest}`, value, []);
    }
    const isGood = (item: unknown): boolean =>
      typeof item === 'number' ? item >= min && item <= max : mayBeNull && item === null;
    const bad = value.findIndex((item) => !isGood(item));
    if (bad < 0) return value.slice() as (number | null)[];
    return this.fault(`${name}[${bad}]`, `must be a number from ${min} to ${max}`, value[bad], []);
  }

  /** Notes a fault of this object as a whole unless `isGood`. */
  require(isGood: boolean, rule: string): void {
    if (!isGood) this.faults.push(`${this.path} ${rule}.`);
  }

  private pathTo(name: string): string {
    return [this.path, name].filter((part) => part !== '').join('.');
  }

  private fault<T>(name: string, rule: string, found: unknown, standIn?: T): T {
    this.faults.push(`${this.pathTo(name)} ${rule}, but it is ${foundWords(found)}.`);
    return standIn as T;
  }
}
