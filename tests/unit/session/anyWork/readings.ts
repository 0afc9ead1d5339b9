import fc from 'fast-check';

/** A length as typed, and what it means: null where only the bench says whether it is one. */
export interface TypedReading {
  readonly text: string;
  readonly means: { readonly lengthM: number; readonly otherLengthM: number | null } | null;
}

/** Tenths of a millimetre. */
const tenths = fc.integer({ min: 100, max: 19_999 });
const WRITTEN: readonly ((tenthsMm: number) => string)[] = [
  (n) => String(n / 100),
  (n) => String(n / 100).replace('.', ','),
  (n) => `${n / 100} cm`,
  (n) => `${n / 10} mm`,
  (n) => `${n / 10_000} m`,
];

const single = fc.tuple(tenths, fc.constantFrom(...WRITTEN)).map(([n, write]): TypedReading => ({
  text: write(n),
  means: { lengthM: n / 10_000, otherLengthM: null },
}));
const bracket = fc.tuple(tenths, fc.integer({ min: 1, max: 900 })).map(([n, wide]): TypedReading => ({
  text: `${n / 100}–${(n + wide) / 100}`,
  means: { lengthM: n / 10_000, otherLengthM: (n + wide) / 10_000 },
}));
/** What sits at a limit, is no length, or isn't one on a second look. */
const odd = fc
  .constantFrom('0.01 mm', '0.1 mm', '1000', '10 m', '10.01 m', '0', '-5', '', 'abc', '1e3', '15.8–99', '0.5')
  .map((text): TypedReading => ({ text, means: null }));

export const anyReading: fc.Arbitrary<TypedReading> = fc.oneof(
  { weight: 6, arbitrary: single },
  { weight: 2, arbitrary: bracket },
  { weight: 1, arbitrary: odd },
);

/** Text as people write it, and as nobody should: quotes, line ends, formulas. */
export const anyText = (maxLength: number): fc.Arbitrary<string> =>
  fc.oneof(
    fc.string({ unit: 'grapheme', maxLength: Math.min(maxLength, 12) }),
    fc.constantFrom('Yard', 'Büro 2', '=1+1', '"', 'a, b; c', 'x\ny', ' ', '', 'ß'.repeat(maxLength)),
  );
