import type { WorkingStep } from '../solver/workingStep.ts';
import type { LaterWords } from './catalogue.ts';
import { laterWords } from './inUse.ts';

/** A letter of a formula. */
export type Letter = keyof LaterWords['working']['letters'] | keyof LaterWords['readingHelp']['terms'];

/** As they come up in the working. */
const IN_ORDER: readonly Letter[] = [
  ...(['L', 'n', 'f', 'λ', 'e', 'ℓ', 'v', 'χ²', 'w', 'c', 'a', 'b', 'q'] as const),
  ...(['t', 'h', 'p', 'γ', 'R', 'T', 'M', 'u', 'U', 'k', 'ν', 'Δ', 'Eₙ'] as const),
];

/**
 * What the letters of these steps mean, each once.
 * @param also  letters that stand elsewhere in the same view
 */
export function letterWords(
  steps: readonly WorkingStep[],
  also: readonly Letter[] = [],
): readonly { readonly letter: Letter; readonly meaning: string }[] {
  const used = new Set([...also, ...steps.flatMap(lettersOf)]);
  const meanings = { ...laterWords.working.letters, ...laterWords.readingHelp.terms };
  return IN_ORDER.filter((letter) => used.has(letter)).map((letter) => ({
    letter,
    meaning: meanings[letter],
  }));
}

/** The letters in a step's formula, numbers and result. */
function lettersOf(step: WorkingStep): readonly Letter[] {
  switch (step.kind) {
    case 'half-wave-from-difference':
      return ['L', 'n', 'λ'];
    case 'wavelength-from-half-wave':
      return ['λ'];
    case 'end-correction':
      return ['L', 'n', 'λ', 'e'];
    case 'column-length':
      return ['L', 'e', 'ℓ'];
    case 'wavelength-from-column':
      return ['n', 'λ', 'ℓ'];
    case 'speed-in-tube':
      return ['f', 'λ', 'v'];
    case 'fit-of-all-marks':
      return ['L', 'n', 'f', 'e', 'v', 'χ²', 'c'];
    case 'free-air':
      return ['v', 'w', 'c'];
    case 'place':
      return step.locatedBy === 'centre' ? ['a', 'b', 'u'] : ['a', 'b', 'q', 'u'];
    case 'standard-uncertainty':
      return ['u'];
    case 'expanded-uncertainty':
      return ['u', 'U', 'k', 'ν'];
    case 'theory':
      return step.filling === 'air' ? ['c', 't', 'h', 'p', 'u'] : ['c', 't', 'γ', 'R', 'T', 'M', 'u'];
    case 'difference-from-theory':
      return ['c', 'U', 'Δ', 'Eₙ'];
  }
}
