import type { Mark } from '../../marks/mark.ts';
import { MarkIndex } from '../../marks/markIndex.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import type { Complex } from '../../numeric/complex.ts';
import { columnGuess } from '../../resonance/following/columnGuess.ts';
import { knownTube } from '../hearing/knownTube.ts';
import type { Solution } from '../../solver/solution.ts';

/** What was heard of one resonance as its column slid past it: 1 + share/(1 + ix), the fork's direct sound being 1. */
export interface ResonanceCircle {
  /** Id of the mark. */
  readonly key: string;
  /** The column's part over the fork's direct sound at resonance. */
  readonly share: Complex;
  /** Half of the resonance's width in length, m; null where order or tube isn't known, or no theory reaches them. */
  readonly halfWidthM: number | null;
}

/**
 * The circles of the present place's marks, oldest first; of a mark with repeats the newest one that was heard. What the
 * user left out may be no resonance at all.
 * @param solution  of that place; its orders count where none was set
 */
export function resonanceCircles(
  experiment: Experiment,
  solution: Solution | null,
): readonly ResonanceCircle[] {
  const { marks, present } = experiment;
  const index = new MarkIndex(marks);
  return index.own.flatMap((mark): ResonanceCircle[] => {
    if (mark.excluded || mark.placeId !== present.placeId) return [];
    const heard = [mark, ...index.repeatsOf(mark)].flatMap(({ evidence }) => evidence?.centre ?? []);
    const centre = heard.at(-1);
    if (centre === undefined) return [];
    const order = mark.order ?? solution?.marks.find(({ key }) => key === mark.id)?.order ?? null;
    return [
      {
        key: mark.id,
        share: { re: centre.shareRe, im: centre.shareIm },
        halfWidthM: order === null ? null : halfWidthM(experiment, mark, order),
      },
    ];
  });
}

function halfWidthM(experiment: Experiment, mark: Mark, order: number): number | null {
  const tube = knownTube(experiment, mark);
  if (tube === null) return null;
  try {
    return columnGuess(tube, order).halfWidthM;
  } catch (error) {
    // A tube may be wider than the mouth's theory allows at this pitch: then nobody knows.
    if (error instanceof RangeError) return null;
    throw error;
  }
}
