import type { ParseFault, PlainHint, QuantityName } from '../marks/parseFault.ts';
import { words } from './inUse.ts';
import { either } from './lists.ts';
import { fullCentimetres, tidy } from './numbers.ts';

/** What each quantity is called within a sentence. */
const NAMES: Readonly<Record<QuantityName, string>> = {
  value: 'value',
  length: 'length',
  order: 'order',
  temperature: 'temperature',
  humidity: 'humidity',
  pressure: 'pressure',
  'carbon-dioxide': 'carbon dioxide',
  pitch: 'pitch',
  diameter: 'diameter',
  'length-uncertainty': 'uncertainty of the length',
  'fork-uncertainty': 'uncertainty of the fork',
  uncertainty: 'uncertainty',
  'reading-uncertainty': 'reading uncertainty',
  'longest-column': 'longest column',
  'zero-offset': 'zero offset',
  rise: 'rise',
  'centre-uncertainty': 'centre’s uncertainty',
  speed: 'speed',
  speed_mps: 'speed_mps',
  standard_uncertainty_mps: 'standard_uncertainty_mps',
  expanded_uncertainty_mps: 'expanded_uncertainty_mps',
};

/** What was likely meant, or how to go on. */
const HINTS: Readonly<Record<PlainHint, (value: number) => string>> = {
  kelvin: (value) => `For kelvin write ${value} K.`,
  fahrenheit: (value) => `For Fahrenheit write ${value} °F.`,
  'plain-hpa': () => 'Plain numbers are hPa: sea level has about 1013.',
  'plain-mm': () => 'Plain numbers are mm.',
  'fork-pitches': () =>
    'The bench works with forks of these pitches: check the number, or take another fork.',
};

/** Why a typed value wasn’t understood, and what to do. */
export function parseFaultWords(fault: ParseFault): string {
  switch (fault.code) {
    case 'empty':
      return `The ${NAMES[fault.name]} is empty. Type a number such as 15.8 or 15,8.`;
    case 'no-number':
      return `“${fault.typed}” is no number for the ${NAMES[fault.name]}.`;
    case 'split-number':
      return `“${fault.typed}” has more than one decimal sign or a gap in it. Write the ${NAMES[fault.name]} like 1234.5.`;
    case 'too-large':
      return `“${fault.typed}” is too large for the ${NAMES[fault.name]}.`;
    case 'unknown-unit':
      return `“${fault.typed}” is no unit for the ${NAMES[fault.name]}. Use ${either(fault.known)}.`;
    case 'out-of-range': {
      const { name, lowest, highest, value, unit, known, hint } = fault;
      const advice = hint === null ? `Check the number and its unit (${either(known)}).` : HINTS[hint](value);
      return `The ${NAMES[name]} must be ${lowest}..${highest} ${unit}, got ${tidy(value)} ${unit}. ${advice}`;
    }
    case 'doubtful-humidity':
      return `${fault.value} % is drier than any room. If a fraction is meant, write ${tidy(100 * fault.value)}; else write ${fault.value} %.`;
    case 'unknown-length-unit':
      return `“${fault.typed}” is no unit of length here. Use cm, mm or m.`;
    case 'bad-length':
      return lengthWords(fault);
    case 'wide-bracket':
      return `The two lengths are more than ${fullCentimetres(fault.widestM)} cm apart: a bracket holds one resonance. Type them closer, or as two marks.`;
    case 'no-ends': {
      const got = fault.typed === '' ? 'The cell is empty.' : `“${fault.typed}” is neither.`;
      return `${got} Write closed (one end closed) or open (both ends open).`;
    }
    case 'bad-order':
      return `The order must be a whole number ${fault.lowest}..${fault.highest}, got ${fault.typed}. The first resonance has 1; leave it empty where you don’t know.`;
    case 'neither-yes-nor-no':
      return `“${fault.typed}” is neither yes nor no. Write yes for a mark that is left out of the fit, else leave the cell empty.`;
    case 'no-way-of-locating':
      return `“${fault.typed}” is no way to find a length. Write centre where the bench showed the resonance’s centre, loudest where it was found by ear or by level.`;
    case 'no-gas':
      return `“${fault.typed}” is no gas that the bench knows. Write ${either(fault.known)}, or leave the cell empty for air.`;
    case 'no-mouth':
      return `“${fault.typed}” is no mouth of a tube. Write ${either(fault.known)}, or leave the cell empty.`;
    case 'long-text':
      return words.tooLong[fault.what](fault.length, fault.longest);
  }
}

function lengthWords(fault: Extract<ParseFault, { readonly code: 'bad-length' }>): string {
  const { value, unit, lowest, highest } = fault;
  const range = `a length must be ${tidy(lowest)}..${tidy(highest)} ${unit}`;
  const hint = fault.isPlain
    ? `Lengths are in cm: if these are millimetres, write ${value} mm.`
    : 'Check the number and its unit (cm, mm or m).';
  switch (fault.why) {
    case 'zero':
      return `The length is zero: ${range}. Type the length of the air column.`;
    case 'negative':
      return `${value} ${unit} is negative: ${range}. Check the zero of the rule.`;
    case 'below-plain':
      return `${value} ${unit} is shorter than any column. Lengths are in cm: if these are metres, write ${value} m or ${tidy(100 * value)}; else write ${value} cm.`;
    case 'too-long':
      return `${value} ${unit} is longer than ${fault.longestM} m: ${range}. ${hint}`;
    case 'too-short':
      return `${value} ${unit} is shorter than any column: ${range}. ${hint}`;
  }
}
