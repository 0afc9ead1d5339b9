import type { SoundCue } from '../../capture/soundSource.ts';
import { parseLength } from '../../marks/parseLength.ts';
import type { LocatedBy, ResonanceCentre } from '../../marks/mark.ts';
import type { Resonance } from '../hearing/listeningTypes.ts';

/** One mark that a recording calls for. */
export interface RecordedMark {
  /** Null where a marked moment holds no resonance now. */
  readonly resonance: Resonance | null;
  readonly cue: SoundCue | null;
  /** What the recording says of the resonance's centre. */
  readonly centre: ResonanceCentre | null;
}

/** How far a resonance may be from its marked moment, s: a flag may fall on the flank of a slow passage. */
const SAME_MOMENT_S = 0.75;

/** A centre belongs to the moment of the same mark that is no further off, s. */
const FURTHEST_CENTRE_S = 3;

/**
 * Puts each resonance to the nearest marked moment, each moment once; what stays alone makes a mark of its own. Moments
 * that are said to be centres make none.
 */
export function matchCues(
  resonances: readonly Resonance[],
  allCues: readonly SoundCue[],
): readonly RecordedMark[] {
  const centres = allCues.flatMap((cue) => markedCentre(cue) ?? []);
  const cues = allCues.filter((cue) => markedCentre(cue) === null);
  const pairs = resonances
    .flatMap((resonance) => cues.map((cue) => ({ resonance, cue })))
    .filter(({ resonance, cue }) => apartS(resonance, cue) <= SAME_MOMENT_S)
    .sort((one, other) => apartS(one.resonance, one.cue) - apartS(other.resonance, other.cue));
  const cueOf = new Map<Resonance, SoundCue>();
  const taken = new Set<SoundCue>();
  for (const { resonance, cue } of pairs) {
    if (cueOf.has(resonance) || taken.has(cue)) continue;
    cueOf.set(resonance, cue);
    taken.add(cue);
  }
  const heard = resonances.map((resonance) => {
    const cue = cueOf.get(resonance) ?? null;
    return { resonance, cue, centre: centreOf(cue, centres) };
  });
  const unheard = cues
    .filter((cue) => !taken.has(cue))
    .map((cue) => ({ resonance: null, cue, centre: centreOf(cue, centres) }));
  const timeS = (mark: RecordedMark): number => mark.resonance?.timeS ?? mark.cue?.timeS ?? 0;
  return [...heard, ...unheard].sort((one, other) => timeS(one) - timeS(other));
}

interface MarkedCentre {
  /** Number of the mark that it belongs to. */
  readonly number: number;
  readonly centre: ResonanceCentre;
}

/** The centre that a moment's label tells of; null where it tells of none. */
function markedCentre({ timeS, label }: SoundCue): MarkedCentre | null {
  const number = String.raw`(-?\d+(?:\.\d+)?(?:e[+-]?\d+)?)`;
  const found = new RegExp(
    String.raw`^Centre of mark (\d+), half widths ${number}, share ${number} ${number}$`,
  ).exec(label);
  if (found === null) return null;
  const [, mark, half, shareRe, shareIm] = found.map(Number);
  return { number: mark, centre: { timeS, standardUncertaintyHalfWidths: half, shareRe, shareIm } };
}

function centreOf(cue: SoundCue | null, centres: readonly MarkedCentre[]): ResonanceCentre | null {
  const named = /^Mark (\d+)\b/.exec(cue?.label ?? '')?.[1];
  if (cue === null || named === undefined) return null;
  const apart = ({ centre }: MarkedCentre): number => Math.abs(centre.timeS - cue.timeS);
  const nearest = centres
    .filter((one) => one.number === Number(named) && apart(one) <= FURTHEST_CENTRE_S)
    .sort((one, other) => apart(one) - apart(other))
    .at(0);
  return nearest?.centre ?? null;
}

/** How the length that a label gives was found; null where it doesn't say. */
export function locatedByOfLabel(label: string): LocatedBy | null {
  return / at the centre$/.test(label) ? 'centre' : null;
}

/** The length that a label gives in centimetres, as “… 49.20 cm …”, m; null where it gives none. */
export function lengthOfLabel(label: string): number | null {
  const found = /(?:^|[^\d.,])(\d{1,4}(?:[.,]\d{1,6})?) ?cm\b/.exec(label)?.[1];
  if (found === undefined) return null;
  const reading = parseLength(found);
  return reading.ok ? reading.lengthM : null;
}

function apartS(resonance: Resonance, cue: SoundCue): number {
  return Math.abs(resonance.timeS - cue.timeS);
}
