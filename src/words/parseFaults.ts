import type { ParseFault, PlainHint } from '../marks/parseFault.ts';
import { words } from './inUse.ts';
import { either } from './lists.ts';
import { fullCentimetres, tidy } from './numbers.ts';

/** Why a typed value wasn’t understood, and what to do. */
export function parseFaultWords(fault: ParseFault): string {
  const said = words.parseFault;
  switch (fault.code) {
    case 'empty':
      return said.empty(said.quantities[fault.name]);
    case 'no-number':
      return said.noNumber(fault.typed, said.quantities[fault.name]);
    case 'split-number':
      return said.splitNumber(fault.typed, said.quantities[fault.name]);
    case 'too-large':
      return said.tooLarge(fault.typed, said.quantities[fault.name]);
    case 'unknown-unit':
      return said.unknownUnit(fault.typed, said.quantities[fault.name], unitsWords(fault.known));
    case 'out-of-range':
      return rangeWords(fault);
    case 'doubtful-humidity':
      return said.doubtfulHumidity(tidy(fault.value), tidy(100 * fault.value));
    case 'unknown-length-unit':
      return said.unknownLengthUnit(fault.typed);
    case 'bad-length':
      return lengthWords(fault);
    case 'wide-bracket':
      return said.wideBracket(fullCentimetres(fault.widestM));
    case 'no-ends':
      return fault.typed === '' ? said.emptyEnds : said.noEnds(fault.typed);
    case 'bad-order':
      return said.badOrder(tidy(fault.lowest), tidy(fault.highest), fault.typed);
    case 'neither-yes-nor-no':
      return said.neitherYesNorNo(fault.typed);
    case 'no-way-of-locating':
      return said.noWayOfLocating(fault.typed);
    case 'no-gas':
      return said.noGas(fault.typed, either(fault.known));
    case 'no-mouth':
      return said.noMouth(fault.typed, either(fault.known));
    case 'long-text':
      return words.tooLong[fault.what](fault.length, fault.longest);
  }
}

function rangeWords(fault: Extract<ParseFault, { readonly code: 'out-of-range' }>): string {
  const said = words.parseFault;
  const { lowest, highest, value, known, hint } = fault;
  const unit = unitWords(fault.unit);
  const range = said.outOfRange(said.quantities[fault.name], tidy(lowest), tidy(highest), tidy(value), unit);
  return `${range} ${hint === null ? said.checkUnit(unitsWords(known)) : hintWords(hint, value)}`;
}

function hintWords(hint: PlainHint, value: number): string {
  const said = words.parseFault.hints[hint];
  return typeof said === 'string' ? said : said(tidy(value));
}

function unitsWords(known: readonly string[]): string {
  return either(known.map(unitWords));
}

/** The one unit that has no symbol is a word. */
function unitWords(unit: string): string {
  return unit === 'half widths' ? words.parseFault.halfWidths : unit;
}

function lengthWords(fault: Extract<ParseFault, { readonly code: 'bad-length' }>): string {
  const said = words.parseFault.badLength;
  const { unit } = fault;
  const value = tidy(fault.value);
  const range = [tidy(fault.lowest), tidy(fault.highest), unit] as const;
  const hint = fault.isPlain ? said.millimetres(value) : said.checkUnit;
  switch (fault.why) {
    case 'zero':
      return said.zero(...range);
    case 'negative':
      return said.negative(value, ...range);
    case 'below-plain':
      return said.belowPlain(value, unit, tidy(100 * fault.value));
    case 'too-long':
      return `${said.tooLong(value, tidy(fault.longestM), ...range)} ${hint}`;
    case 'too-short':
      return `${said.tooShort(value, ...range)} ${hint}`;
  }
}
