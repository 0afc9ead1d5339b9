import type { Person } from './person.ts';

/** A hand that looks so often, goes most of the way that it was told, and at most so far at once. */
const LOOK_MS = 500;
const LOOKS = 60;
const OBEYED_PART = 0.8;
const FARTHEST_CM = 0.5;
const UNKNOWN_STEP_CM = 0.1;
/** Told to be so near, and then nothing new for a while, a student reads the rule, mm. */
const NEAR_MM = 0.6;
const WORDS = /: push in|: pull out|Hold still and read the rule|loudest place|Can’t tell|Back to the/;

/**
 * Slides the practice column as the page says until it says “Here”, or says no more near it.
 * @param fromCm  where the column is
 * @returns what the rule shows there, cm
 * @throws Error with all that was said, where the page never led there
 */
export async function goBackToResonance(person: Person, fromCm: number): Promise<number> {
  const seen: string[] = [];
  let nearest = { cm: fromCm, mm: Infinity };
  let cm = fromCm;
  for (let look = 0; look < LOOKS; look += 1) {
    await person.wait(LOOK_MS);
    const words = await person.waitForWords(WORDS);
    seen.push(`${cm.toFixed(2)} cm: ${words}`);
    if (words.includes('Here')) return cm;
    const side = /too (long|short)/.exec(words)?.[1];
    if (side === undefined || words.includes('s ago')) {
      if (nearest.mm <= NEAR_MM) return nearest.cm;
      continue;
    }
    const told = /([\d.]+)\s*mm to go/.exec((await person.said(/[\d.]+\s*mm to go/)) ?? '')?.[1];
    const stepCm = told === undefined ? UNKNOWN_STEP_CM : Math.min(Number(told) / 10, FARTHEST_CM);
    if (told !== undefined && Number(told) <= nearest.mm) nearest = { cm, mm: Number(told) };
    cm += (side === 'long' ? -1 : 1) * OBEYED_PART * stepCm;
    // In fifths of a millimetre, as the column goes.
    cm = Math.round(cm * 50) / 50;
    await person.slide('Length of the column', cm.toFixed(2));
  }
  throw new Error(`${person.page.engine}: the page never led there:\n${seen.join('\n')}`);
}
