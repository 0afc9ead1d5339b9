import { readingLimit } from '../marks/columnOfMark.ts';
import type { FieldRule, RecordFault } from '../notebook/recordFault.ts';
import { foundWords } from './found.ts';
import { words } from './inUse.ts';

/** What is wrong with a record, in one sentence or two. */
export function recordFaultWords(fault: RecordFault): string {
  const said = words.recordFault;
  switch (fault.code) {
    case 'field':
    case 'unequal-lists':
      return said.at(fault.path, fieldFaultWords(fault));
    case 'same-id':
      return said.sameId[fault.list];
    case 'dangling':
      return fault.markId === null
        ? said.ofPresent[fault.to](fault.id)
        : said.ofMark[fault.to](fault.markId, fault.id);
    case 'no-object':
      return said.noObject;
    case 'newer-version':
      return said.newerVersion(fault.version, fault.newest);
    case 'no-version':
      return said.noVersion(foundWords(fault.found), fault.newest);
    case 'unreadable':
      return said.unreadable(fault.said);
  }
}

/** The same of a field, without its name, which goes before it. */
export function fieldFaultWords(
  fault: Extract<RecordFault, { readonly code: 'field' | 'unequal-lists' }>,
): string {
  return fault.code === 'field'
    ? ruleWords(fault.rule, foundWords(fault.found))
    : words.recordFault.unequalLists(fault.lists[0], fault.lists[1]);
}

/** The first of several faults; empty where there is none. */
export function firstFaultWords(faults: readonly RecordFault[]): string {
  const [first] = faults;
  return first === undefined ? '' : recordFaultWords(first);
}

/** Numbers as the file has them, which is where they must be put right. */
function ruleWords(rule: FieldRule, found: string): string {
  const said = words.recordFault.mustBe;
  switch (rule.kind) {
    case 'object':
    case 'whole-number':
    case 'flag':
      return said[rule.kind](found);
    case 'text':
    case 'list':
      return said[rule.kind](found, rule.longest);
    case 'number':
      return said.number(found, String(rule.limit.lowest), String(rule.limit.highest));
    case 'choice':
      return said.choice(found, rule.choices.join(', '));
    case 'reading': {
      const { lowest, highest } = readingLimit(rule.zeroOffsetM);
      return said.reading(found, String(lowest), String(highest), String(rule.zeroOffsetM));
    }
  }
}
