import { markLengthM } from '../marks/mark.ts';
import type { Mark } from '../marks/mark.ts';
import type { Experiment } from '../notebook/experiment.ts';
import type { SolvedMark } from '../solver/solution.ts';
import { placeLabel } from '../notebook/placeLabels.ts';
import { doubtWords } from './captureTrust.ts';
import { words } from './inUse.ts';
import { fixed, percent, roundPair, signed, stampedHertz } from './numbers.ts';
import { outlierCauseWords } from './outlierCauses.ts';

/** What is said of one mark beside its length. */
export interface MarkWords {
  /** Fork, ends and, where there are several, the place. */
  readonly apparatus: string;
  /** How it came about: what was heard, or that it was made by hand. */
  readonly evidence: string;
  /** What spoke against the sound when it was flagged; null where nothing did. */
  readonly doubt: string | null;
  /** The length in the middle of a bracket with its standard uncertainty; null for a single length, and for twice the same. */
  readonly bracket: string | null;
  /** Order with how sure it is; null before it is solved. */
  readonly order: string | null;
  /** Measured minus fitted length, alone and in words; null before there is a fit. */
  readonly residualMm: string | null;
  readonly residual: string | null;
  readonly cause: string | null;
}

const SURE = 0.995;

/**
 * Puts a mark into words, rounded.
 * @param labels  names of the places, from whoever asks for many marks
 */
export function markWords(
  experiment: Experiment,
  mark: Mark,
  solved: SolvedMark | null,
  labels?: ReadonlyMap<string, string>,
): MarkWords {
  const fork = experiment.forks.find((candidate) => candidate.id === mark.forkId);
  const parts = [`${fork === undefined ? '?' : stampedHertz(fork.nominalHz)} Hz`, words.endsShort[mark.ends]];
  if (experiment.places.length > 1)
    parts.push(labels?.get(mark.placeId) ?? placeLabel(experiment, mark.placeId));
  const { evidence } = mark;
  const said = words.markFacts;
  const residualMm = solved === null ? null : signed(solved.residualM * 1000, 1);
  return {
    apparatus: parts.join(' · '),
    evidence:
      evidence === null
        ? said.byHand
        : said.heard(fixed(evidence.timeS, 1), fixed(evidence.riseDb, 0), percent(evidence.confidence)),
    doubt: doubtWords(evidence?.doubt),
    bracket: bracketWords(mark),
    order: solved === null ? null : orderWords(solved, mark.order !== null),
    residualMm,
    residual: residualMm === null ? null : said.fromFit(residualMm),
    cause: solved === null || solved.cause === null ? null : outlierCauseWords(solved.cause),
  };
}

function orderWords(solved: SolvedMark, isFixed: boolean): string {
  const said = words.markFacts;
  if (isFixed) return said.orderSet(solved.order);
  if (solved.orderConfidence >= SURE) return said.order(solved.order);
  return said.orderSure(solved.order, percent(solved.orderConfidence));
}

/** A bracket says only that the resonance lies inside: a rectangular distribution (JCGM 100:2008, 4.3.7). */
function bracketWords(mark: Mark): string | null {
  const middleM = markLengthM(mark);
  if (mark.lengthM === null || mark.otherLengthM === null || middleM === null) return null;
  const widthM = Math.abs(mark.otherLengthM - mark.lengthM);
  // A file may give the same length twice: that is one length.
  if (widthM === 0) return null;
  const pair = roundPair(middleM * 100, (widthM * 100) / Math.sqrt(12));
  return words.markFacts.between(pair.value, pair.uncertainty);
}

/** That a mark may be none, where its confidence is low. */
export function unsureWords({ evidence }: Pick<Mark, 'evidence'>): string {
  return words.markRow.unsure(percent(evidence?.confidence ?? 0));
}

/** A deleted mark, told apart by its length, and the button that brings it back. */
export function deletedMarkWords({ lengthM }: Pick<Mark, 'lengthM'>): {
  readonly mark: string;
  readonly bringBack: string;
} {
  const said = words.marks;
  if (lengthM === null) return { mark: said.withoutLength, bringBack: said.bringBackWithoutLength };
  const shown = fixed(lengthM * 100, 2);
  return { mark: said.atLength(shown), bringBack: said.bringBackAtLength(shown) };
}
