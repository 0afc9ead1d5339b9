import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { PRINT_PALETTE } from '../../../src/report/plots/plot.ts';
import { contrast, DEFICIENCIES, difference } from './colourVision.ts';
import type { Vision } from './colourVision.ts';

const LIMITS = {
  /** Colour difference from which two lines are told apart at a glance; a judgement (1 is just noticeable side by side). */
  apart: 20,
  /** WCAG 2.2, 1.4.3 for text and 1.4.11 for what is needed to understand a graphic. */
  text: 4.5,
  graphic: 3,
} as const;

/** The tokens of one theme as they stand in the style sheet. */
function tokensOf(selector: string): Record<string, string> {
  const css = readFileSync(join(import.meta.dirname, '../../../src/ui/theme.css'), 'utf8');
  const start = css.indexOf(`${selector} {`);
  const block = css.slice(start, css.indexOf('}', start));
  return Object.fromEntries(
    [...block.matchAll(/--([a-z-]+): (#[0-9a-f]{6});/g)].map(([, name, hex]) => [name, hex]),
  );
}

const light = tokensOf(':root');
const themes: Record<string, Record<string, string>> = {
  light,
  dark: { ...light, ...tokensOf(":root[data-theme='dark']") },
  print: { ...light, ...PRINT_PALETTE, 'ink-soft': PRINT_PALETTE.soft },
};

/** Colours that mean different things on one picture and aren't also told apart by their shape. */
const TOLD_APART = [
  ['tone', 'room'],
  ['tone', 'ink'],
  ['room', 'alert'],
  ['tone-fill', 'glass'],
  ['tone', 'ink-soft'],
] as const;

const VISIONS: readonly Vision[] = ['usual', 'protanopia', 'deuteranopia', 'tritanopia'];

describe('the simulation of colour vision', () => {
  it('leaves white and grey as they are: each row adds up to 1', () => {
    for (const matrix of Object.values(DEFICIENCIES)) {
      for (const row of [0, 3, 6]) {
        expect(matrix.slice(row, row + 3).reduce<number>((sum, part) => sum + part, 0)).toBeCloseTo(1, 5);
      }
    }
  });

  it('makes the red and green of equal lightness alike for a deuteranope, and not for others', () => {
    // #b5522b and #6f7a1e: picked so that they differ in red against green alone.
    expect(difference('#b5522b', '#6f7a1e', 'usual')).toBeGreaterThan(40);
    expect(difference('#b5522b', '#6f7a1e', 'deuteranopia')).toBeLessThan(20);
  });

  it('calls black and white 100 apart and 21 : 1', () => {
    expect(difference('#000000', '#ffffff', 'usual')).toBeCloseTo(100, 1);
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
  });
});

describe.each(Object.entries(themes))('the %s theme', (_name, token) => {
  it.each(VISIONS)('keeps what differs in meaning apart, %s vision', (vision) => {
    for (const [one, other] of TOLD_APART) {
      const found = difference(token[one] ?? '', token[other] ?? '', vision);
      expect(found, `${one} and ${other}`).toBeGreaterThanOrEqual(LIMITS.apart);
    }
  });

  it('has contrast enough for text and for lines', () => {
    for (const ground of ['paper', 'sheet']) {
      for (const text of ['ink', 'ink-soft', 'tone', 'room', 'alert', 'caution']) {
        const found = contrast(token[text] ?? '', token[ground] ?? '');
        expect(found, `${text} on ${ground}`).toBeGreaterThanOrEqual(LIMITS.text);
      }
      expect(contrast(token['edge'] ?? '', token[ground] ?? '')).toBeGreaterThanOrEqual(LIMITS.graphic);
    }
  });
});
