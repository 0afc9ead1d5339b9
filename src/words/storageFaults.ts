import type { StorageFault } from '../notebook/storageFault.ts';
import { words } from './inUse.ts';

/** Why something wasn’t kept, and what to do about it. */
export function storageFaultWords(fault: StorageFault): string {
  const said = words.storageFault;
  switch (fault.kind) {
    case 'elsewhere':
      return said.elsewhere;
    case 'full':
      return said.full;
    case 'gone':
      return fault.by === null ? said.closed : said.gone[fault.by];
    case 'refused':
      return said.refused;
    case 'broken':
      return fault.why === 'unknown' ? said.unknown(fault.said) : said[fault.why];
  }
}
