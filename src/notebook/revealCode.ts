import type { Experiment } from './experiment.ts';
import { keepsBack } from './keptBack.ts';
import { digest } from './packedText.ts';

/** Letters and digits that nobody takes for another: no I, L, O, U, 0, 1. */
const LETTERS = 'ABCDEFGHJKMNPQRSTVWXYZ23456789';
const LENGTH = 6;

/** A code that shows what a lesson keeps back. @param random  at least six whole numbers from 0 on, evenly spread */
export function newRevealCode(random: ArrayLike<number>): string {
  return Array.from({ length: LENGTH }, (_, i) => LETTERS.charAt((random[i] ?? 0) % LETTERS.length)).join('');
}

/**
 * What a lesson bears of its code. A latch and no lock: whoever reads the program can try all codes, as he can work
 * theory out himself.
 */
export function revealDigest(code: string): string {
  const plain = code.toUpperCase().replaceAll(/[^A-Z0-9]/g, '');
  return digest(new TextEncoder().encode(`bench:${plain}`))
    .toString(16)
    .padStart(8, '0');
}

/** The experiment with nothing kept back; the very same one where this code isn't its lesson's. */
export function revealed(experiment: Experiment, code: string): Experiment {
  const { lesson } = experiment;
  if (!keepsBack(lesson) || lesson.reveal !== revealDigest(code)) return experiment;
  return { ...experiment, lesson: { ...lesson, hideExpected: false, hideTheory: false, hideTruth: false } };
}
