import { isWithin } from '../limits/limits.ts';
import type { Limit } from '../limits/limits.ts';
import { wellFormed } from '../limits/texts.ts';
import type { FieldRule, RecordFault } from './recordFault.ts';

/** A number that stands outside of its limit: nothing else is wrong with its field. */
export interface Outside {
  /** As in a fault: marks[3].lengthM. */
  readonly path: string;
  readonly found: number;
  readonly limit: Limit;
}

/** What is wrong with a record. */
export class RecordFaults {
  readonly all: RecordFault[] = [];
  /** Those among them that are numbers outside of their limits. */
  readonly outside: Outside[] = [];

  addOutside(outside: Outside, rule: FieldRule): void {
    this.outside.push(outside);
    this.all.push({ code: 'field', path: outside.path, rule, found: outside.found });
  }
}

/**
 * Walks through an untrusted JSON value field by field. Each fault is noted with its path and a harmless
 * stand-in is returned, so that one pass finds every fault. The faults are shared with all children.
 */
export class RecordReader {
  private readonly fields: Readonly<Record<string, unknown>>;
  readonly isObject: boolean;
  /** The object that is read; null where it is none. */
  readonly source: object | null;

  constructor(
    private readonly path: string,
    value: unknown,
    readonly faults: RecordFaults = new RecordFaults(),
  ) {
    this.isObject = typeof value === 'object' && value !== null && !Array.isArray(value);
    this.source = this.isObject ? (value as object) : null;
    this.fields = this.isObject ? (value as Record<string, unknown>) : {};
    if (!this.isObject && path !== '') this.fault('', { kind: 'object' }, value);
  }

  /** The field as it stands; undefined where it is missing or inherited. */
  raw(name: string): unknown {
    return Object.hasOwn(this.fields, name) ? this.fields[name] : undefined;
  }

  /** Text without halves of surrogate pairs. */
  text(name: string, longest: number): string {
    const value = this.raw(name);
    if (typeof value === 'string' && value.length <= longest) return wellFormed(value);
    return this.fault(name, { kind: 'text', longest }, value, '');
  }

  textOrNull(name: string, longest: number): string | null {
    return this.raw(name) === null ? null : this.text(name, longest);
  }

  number(name: string, limit: Limit): number {
    const value = this.raw(name);
    if (typeof value === 'number' && isWithin(limit, value)) return value;
    const rule: FieldRule = { kind: 'number', limit };
    // An endless one is no number that anybody wrote.
    if (typeof value !== 'number' || !Number.isFinite(value))
      return this.fault(name, rule, value, limit.lowest);
    this.faults.addOutside({ path: this.pathTo(name), found: value, limit }, rule);
    return limit.lowest;
  }

  numberOrNull(name: string, limit: Limit): number | null {
    return this.raw(name) === null ? null : this.number(name, limit);
  }

  whole(name: string, limit: Limit): number {
    const value = this.number(name, limit);
    return Number.isInteger(value) ? value : this.fault(name, { kind: 'whole-number' }, value, limit.lowest);
  }

  wholeOrNull(name: string, limit: Limit): number | null {
    return this.raw(name) === null ? null : this.whole(name, limit);
  }

  flag(name: string): boolean {
    const value = this.raw(name);
    return typeof value === 'boolean' ? value : this.fault(name, { kind: 'flag' }, value, false);
  }

  choice<T extends string>(name: string, choices: readonly T[]): T {
    const value = this.raw(name);
    const found = choices.find((choice) => choice === value);
    return found ?? this.fault(name, { kind: 'choice', choices }, value, choices.at(0));
  }

  /** A list of choices, each once at most. */
  choices<T extends string>(name: string, choices: readonly T[]): readonly T[] {
    const value = this.raw(name);
    if (!Array.isArray(value) || value.length > choices.length) {
      return this.fault(name, { kind: 'list', longest: choices.length }, value, []);
    }
    const bad = value.findIndex((item, at) => !choices.includes(item as T) || value.indexOf(item) !== at);
    if (bad < 0) return value.slice() as T[];
    return this.fault(`${name}[${bad}]`, { kind: 'choice', choices }, value[bad], []);
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
      return this.fault(name, { kind: 'list', longest }, value, []);
    }
    return value.map((item, index) => new RecordReader(`${this.pathTo(name)}[${index}]`, item, this.faults));
  }

  /** A list of numbers; `mayBeNull` also takes null in place of a number. */
  numbers(name: string, longest: number, limit: Limit): readonly number[];
  numbers(name: string, longest: number, limit: Limit, mayBeNull: true): readonly (number | null)[];
  numbers(name: string, longest: number, limit: Limit, mayBeNull = false): readonly (number | null)[] {
    const value = this.raw(name);
    if (!Array.isArray(value) || value.length > longest) {
      return this.fault(name, { kind: 'list', longest }, value, []);
    }
    const isGood = (item: unknown): boolean =>
      typeof item === 'number' ? isWithin(limit, item) : mayBeNull && item === null;
    const bad = value.findIndex((item) => !isGood(item));
    if (bad < 0) return value.slice() as (number | null)[];
    return this.fault(`${name}[${bad}]`, { kind: 'number', limit }, value[bad], []);
  }

  /** Notes a fault unless two of this object's lists have the same length. */
  requireSameLength(lists: readonly [string, string], lengths: readonly [number, number]): void {
    if (lengths[0] !== lengths[1]) this.faults.all.push({ code: 'unequal-lists', path: this.path, lists });
  }

  private pathTo(name: string): string {
    return [this.path, name].filter((part) => part !== '').join('.');
  }

  private fault<T>(name: string, rule: FieldRule, found: unknown, standIn?: T): T {
    this.faults.all.push({ code: 'field', path: this.pathTo(name), rule, found });
    return standIn as T;
  }
}
