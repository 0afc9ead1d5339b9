import { readingLimit } from '../marks/columnOfMark.ts';
import type { FieldRule, RecordFault } from '../notebook/recordFault.ts';
import { foundWords } from './found.ts';

/** What is wrong with a record, in one sentence or two. */
export function recordFaultWords(fault: RecordFault): string {
  switch (fault.code) {
    case 'field':
    case 'unequal-lists':
      return `${fault.path} ${fieldFaultWords(fault)}`;
    case 'same-id':
      return `${fault.list}: two ${fault.list} have the same id.`;
    case 'dangling': {
      const where = fault.markId === null ? 'present' : `mark ${fault.markId}`;
      return `${where}: there is no ${fault.to} “${fault.id}” in this file.`;
    }
    case 'no-object':
      return 'This isn’t an experiment: a JSON object was expected.';
    case 'newer-version':
      return `schemaVersion is ${fault.version}; this bench reads up to version ${fault.newest}. The record was made by a newer bench: open it there, or load this page anew.`;
    case 'no-version':
      return `schemaVersion is ${foundWords(fault.found)}; a whole number from 1 to ${fault.newest} was expected. This may be a file of another program.`;
    case 'unreadable':
      return `This record can’t be read (${fault.said}).`;
  }
}

/** The same of a field, without its name, which goes before it. */
export function fieldFaultWords(
  fault: Extract<RecordFault, { readonly code: 'field' | 'unequal-lists' }>,
): string {
  return fault.code === 'field'
    ? `${ruleWords(fault.rule)}, but it is ${foundWords(fault.found)}.`
    : `must have as many values in ${fault.lists[0]} as in ${fault.lists[1]}.`;
}

/** The first of several faults; empty where there is none. */
export function firstFaultWords(faults: readonly RecordFault[]): string {
  const [first] = faults;
  return first === undefined ? '' : recordFaultWords(first);
}

function ruleWords(rule: FieldRule): string {
  switch (rule.kind) {
    case 'object':
      return 'must be an object';
    case 'whole-number':
      return 'must be a whole number';
    case 'flag':
      return 'must be true or false';
    case 'text':
      return `must be text of at most ${rule.longest} characters`;
    case 'list':
      return `must be a list of at most ${rule.longest}`;
    case 'number':
      return `must be a number from ${rule.limit.lowest} to ${rule.limit.highest}`;
    case 'choice':
      return `must be one of ${rule.choices.join(', ')}`;
    case 'reading': {
      const { lowest, highest } = readingLimit(rule.zeroOffsetM);
      return `must be from ${lowest} to ${highest}, so that the zero offset of ${rule.zeroOffsetM} leaves a column`;
    }
  }
}
