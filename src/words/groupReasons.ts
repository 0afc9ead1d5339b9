import type { GroupReason } from '../solver/likelyGroupReason.ts';
import { laterWords } from './inUse.ts';
import type { NameMark } from './markNames.ts';
import { centimetres, fixed, hertz } from './numbers.ts';
import { outlierCauseWords } from './outlierCauses.ts';

/** Why a group's result lies off its class's, in its sentences. */
export function groupReasonWords(reason: GroupReason, nameMark: NameMark): string {
  const said = laterWords.groupReason;
  switch (reason.code) {
    case 'other-fork':
      return said.otherFork(hertz(reason.fittingHz), hertz(reason.notedHz));
    case 'shifted-zero': {
      const shift = centimetres(Math.abs(reason.shiftM));
      const off = reason.shiftM > 0 ? said.allLong(shift) : said.allShort(shift);
      return `${off} ${said.checkZero[reason.ends ?? 'mixed']}`;
    }
    case 'mark-off':
      return said.markOff(nameMark(reason.key), centimetres(reason.lengthM), outlierCauseWords(reason.cause));
    case 'all-off': {
      const percent = fixed(Math.abs(100 * reason.excess), 1);
      return reason.excess > 0 ? said.allLonger(percent) : said.allShorter(percent);
    }
  }
}
