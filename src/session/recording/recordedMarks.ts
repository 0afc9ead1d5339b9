import type { SoundCue } from '../../capture/soundSource.ts';
import { parseLength } from '../../marks/parseLength.ts';
import type { Resonance } from '../hearing/listeningTypes.ts';

/** One mark that a recording calls for. */
export interface RecordedMark {
  /** Null where a marked moment holds no resonance now. */
  readonly resonance: Resonance | null;
  readonly cue: SoundCue | null;
}

/** How far a resonance may be from its marked moment, s: a flag may fall on the flank of a slow passage. */
const SAME_MOMENT_S = 0.75;

/** Puts each resonance to the nearest marked moment, each moment once; what stays alone makes a mark of its own. */
export function matchCues(
  resonances: readonly Resonance[],
  cues: readonly SoundCue[],
): readonly RecordedMark[] {
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
  const heard = resonances.map((resonance) => ({ resonance, cue: cueOf.get(resonance) ?? null }));
  const unheard = cues.filter((cue) => !taken.has(cue)).map((cue) => ({ resonance: null, cue }));
  const timeS = (mark: RecordedMark): number => mark.resonance?.timeS ?? mark.cue?.timeS ?? 0;
  return [...heard, ...unheard].sort((one, other) => timeS(one) - timeS(other));
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
