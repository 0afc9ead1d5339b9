/** A quantity or text that is typed or stands in a table. */
export type QuantityName =
  | 'value'
  | 'length'
  | 'order'
  | 'temperature'
  | 'humidity'
  | 'pressure'
  | 'carbon-dioxide'
  | 'pitch'
  | 'diameter'
  | 'length-uncertainty'
  | 'fork-uncertainty'
  | 'uncertainty'
  | 'reading-uncertainty'
  | 'longest-column'
  | 'zero-offset'
  | 'speed'
  | 'rise'
  | 'centre-uncertainty'
  | ResultColumn;

/** Columns of a table of results that hold numbers. */
export type ResultColumn = 'speed_mps' | 'standard_uncertainty_mps' | 'expanded_uncertainty_mps';

/** What a plain number outside of its limits was likely meant as. */
export type PlainHint = 'kelvin' | 'fahrenheit' | 'plain-hpa' | 'plain-mm' | 'fork-pitches';

/** Why a typed value wasn't understood. `typed` is what stands there, shortened. */
export type ParseFault =
  | { readonly code: 'empty'; readonly name: QuantityName }
  | {
      readonly code: 'no-number' | 'split-number' | 'too-large';
      readonly name: QuantityName;
      readonly typed: string;
    }
  /** `known`: the units to choose from. */
  | {
      readonly code: 'unknown-unit';
      readonly name: QuantityName;
      readonly typed: string;
      readonly known: readonly string[];
    }
  /** Limits and value in the unit that was typed. */
  | {
      readonly code: 'out-of-range';
      readonly name: QuantityName;
      readonly lowest: number;
      readonly highest: number;
      readonly value: number;
      readonly unit: string;
      readonly known: readonly string[];
      /** Null: no idea. */
      readonly hint: PlainHint | null;
    }
  /** More likely a fraction than %. */
  | { readonly code: 'doubtful-humidity'; readonly value: number }
  | { readonly code: 'unknown-length-unit'; readonly typed: string }
  /** `below-plain`: a plain number that is more likely in metres. */
  | {
      readonly code: 'bad-length';
      readonly why: 'zero' | 'negative' | 'below-plain' | 'too-long' | 'too-short';
      readonly value: number;
      /** As it was typed, cm where it wasn't. */
      readonly unit: string;
      readonly isPlain: boolean;
      /** In that unit. */
      readonly lowest: number;
      readonly highest: number;
      readonly longestM: number;
    }
  | { readonly code: 'wide-bracket'; readonly widestM: number }
  /** Empty where nothing stands there. */
  | { readonly code: 'no-ends'; readonly typed: string }
  | {
      readonly code: 'bad-order';
      readonly lowest: number;
      readonly highest: number;
      readonly typed: string;
    }
  | { readonly code: 'neither-yes-nor-no'; readonly typed: string }
  | { readonly code: 'no-way-of-locating'; readonly typed: string }
  | { readonly code: 'no-gas'; readonly typed: string; readonly known: readonly string[] }
  | { readonly code: 'no-mouth'; readonly typed: string; readonly known: readonly string[] }
  | {
      readonly code: 'long-text';
      readonly what: 'place' | 'group' | 'note' | 'fork_id';
      readonly length: number;
      readonly longest: number;
    };
