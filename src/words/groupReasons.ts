import type { ColumnEnds } from '../marks/mark.ts';
import type { GroupReason } from '../solver/likelyGroupReason.ts';
import type { NameMark } from './markNames.ts';
import { centimetres, fixed, hertz } from './numbers.ts';
import { outlierCauseWords } from './outlierCauses.ts';

/** Why a group's result lies off its class's, in one sentence. */
export function groupReasonWords(reason: GroupReason, nameMark: NameMark): string {
  switch (reason.code) {
    case 'other-fork':
      return `Its lengths fit a fork of ${hertz(reason.fittingHz)} Hz: another fork than the ${hertz(reason.notedHz)} Hz that is noted?`;
    case 'shifted-zero': {
      const side = reason.shiftM > 0 ? 'long' : 'short';
      return `With the class’s speed all its lengths are about ${centimetres(Math.abs(reason.shiftM))} cm too ${side}: is the rule’s zero ${zeroPlace(reason.ends)}, and the offset typed?`;
    }
    case 'mark-off':
      return `${nameMark(reason.key)} (${centimetres(reason.lengthM)} cm): ${outlierCauseWords(reason.cause)}`;
    case 'all-off': {
      const percent = 100 * reason.excess;
      return `Its lengths agree with each other but are ${fixed(Math.abs(percent), 1)} % too ${percent > 0 ? 'long' : 'short'} for the class’s speed: check the fork’s pitch, the rule and the noted temperature.`;
    }
  }
}

/** Where the rule's zero belongs depends on the tube. */
function zeroPlace(ends: ColumnEnds | null): string {
  if (ends === null) return 'at the column’s end';
  return ends === 'open' ? 'at the tube’s other end' : 'at the tube’s closed end';
}
