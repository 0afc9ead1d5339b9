import { describe, expect, it } from 'vitest';
import { newExperiment } from '../../../src/notebook/newExperiment.ts';
import { fileStem } from '../../../src/report/experimentJson.ts';

const stemOf = (title: string): string =>
  fileStem({ ...newExperiment('x', '2026-11-29T10:00:00.000Z'), title });

describe('the name of a file', () => {
  it.each([
    ['Säule & Gabel', 'Säule-Gabel-2026-11-29'],
    ['Prędkość dźwięku, łącznie', 'Prędkość-dźwięku-łącznie-2026-11-29'],
    ['a\u0308 as two characters', 'ä-as-two-characters-2026-11-29'],
    ['Größe: 3/4 "rohr"?', 'Größe-3-4-rohr-2026-11-29'],
    ['<>:"/\\|?*', 'experiment-2026-11-29'],
  ])('keeps the letters of %s and nothing that a system forbids', (title, stem) => {
    expect(stemOf(title)).toBe(stem);
  });

  it('is cut after 50 characters, within none, and stays within the 255 bytes that a file’s name may have', () => {
    expect(stemOf('𝕏'.repeat(70))).toBe(`${'X'.repeat(50)}-2026-11-29`);
    expect(stemOf('𐐷'.repeat(70))).toBe(`${'𐐷'.repeat(50)}-2026-11-29`);
    const longest = `${stemOf('𐐷'.repeat(70))}-sound-1000.wav`;
    expect(new TextEncoder().encode(longest).length).toBeLessThanOrEqual(255);
  });
});
