import type { ClassDesk } from '../../classroom/classDesk.ts';
import {
  GROUP_PREFIX,
  joinedParts,
  PART_PREFIX,
  readGroupHash,
  readGroupPart,
} from '../../notebook/groupLink.ts';
import { laterWords } from '../../words/inUse.ts';
import { linkFaultWords } from '../../words/lessonLink.ts';
import { codeTakenWords } from '../../words/page/class.ts';

/** What came of a code or a link, in words. */
export interface TakenCode {
  readonly kind: 'info' | 'problem';
  readonly said: string;
}

/** Takes a group's result into the class: the whole of it, or one of several codes. @param text  an address, or its end from # on */
export async function takeCode(text: string, desk: ClassDesk): Promise<TakenCode> {
  const at = text.indexOf('#');
  const hash = at < 0 ? '' : text.slice(at);
  if (!hash.startsWith(PART_PREFIX)) return takeWhole(hash, desk);
  const part = readGroupPart(hash);
  if (part === null) return { kind: 'problem', said: linkFaultWords({ code: 'damaged' }) };
  const parts = desk.addPart(part);
  const whole = joinedParts(parts);
  if (whole === null) return { kind: 'info', said: laterWords.codeTaken.part(parts.length, part.count) };
  desk.dropParts(part.of);
  return takeWhole(whole, desk);
}

async function takeWhole(hash: string, desk: ClassDesk): Promise<TakenCode> {
  if (!hash.startsWith(GROUP_PREFIX)) return { kind: 'problem', said: laterWords.codeTaken.notACode };
  const read = await readGroupHash(hash);
  if (read === null) return { kind: 'problem', said: laterWords.codeTaken.notACode };
  if ('fault' in read) return { kind: 'problem', said: linkFaultWords(read.fault) };
  const taken = await desk.addOne(read);
  return { kind: 'info', said: codeTakenWords(taken, desk.groups.length) };
}
