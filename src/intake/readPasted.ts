import { LARGEST_TABLE_BYTES } from '../limits/sizes.ts';
import { wellFormed } from '../limits/texts.ts';
import type { TableDefaults } from '../marks/marksTable.ts';
import type { Intake } from './intakeTypes.ts';
import { readExperimentText } from './readExperimentText.ts';
import { laterWords } from '../words/inUse.ts';
import { longPasteWords } from '../words/intakeFaults.ts';
import { readTableText } from './readTableText.ts';

/**
 * Reads text that was pasted or typed: an experiment's JSON, or a table.
 * @param defaults  the fork and the ends that are set on the page, which the table may leave out together with its
 *     heading; null where several groups' tables come together, each of which must name its own
 */
export function readPasted(pasted: string, defaults: TableDefaults | null): Intake {
  const name = laterWords.pastedName;
  const text = wellFormed(pasted);
  if (text.length > LARGEST_TABLE_BYTES) {
    const message = longPasteWords(text.length);
    return { name, content: null, faults: [{ row: null, column: null, message }], remarks: [] };
  }
  return /^\s*[{[]/.test(text) ? readExperimentText(name, text) : readTableText(name, text, defaults);
}
