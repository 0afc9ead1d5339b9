import type { MarksFit } from './fitMarks.ts';
import type { Preparation } from './prepareMarks.ts';
import type { BudgetLine } from './solution.ts';
import { pitch } from './wording.ts';

/** The fit's contributions as lines of an uncertainty budget, largest first. */
export function writeBudget(preparation: Preparation, fit: MarksFit): readonly BudgetLine[] {
  const { rows, rule, end, endIsRelative, wallsRemoved } = preparation;
  const used = rows.filter((_, i) => fit.speedWeights[i] !== 0);
  const meanReadingM = Math.sqrt(used.reduce((sum, row) => sum + row.variance, 0) / Math.max(used.length, 1));
  const lines = fit.contributions.map(({ source, fork, contributionMps, degreesOfFreedom }): BudgetLine => {
    const line = (quantity: string, standardUncertainty: number, unit: string): BudgetLine => ({
      quantity,
      standardUncertainty,
      unit,
      sensitivity: standardUncertainty > 0 ? contributionMps / standardUncertainty : null,
      contributionMps,
      degreesOfFreedom,
    });
    switch (source) {
      case 'reading': {
        const scatter = fit.scatterFactor > 1 ? ', widened by their scatter' : '';
        return line(
          `Lengths: reading and finding the resonance${scatter}`,
          meanReadingM * fit.scatterFactor,
          'm',
        );
      }
      case 'fork': {
        const marks = used.filter((row) => row.fork === fork);
        // Rows of one fork may state its uncertainty differently: the largest stands for all.
        const uncertaintyHz = Math.max(0, ...marks.map(({ mark }) => mark.frequencyStandardUncertaintyHz));
        return line(
          `Pitch of the fork ${pitch(rows.find((row) => row.fork === fork)?.mark.frequencyHz ?? 0)} Hz`,
          uncertaintyHz,
          'Hz',
        );
      }
      case 'zero':
        return line('Zero of the rule', rule.zeroStandardUncertaintyM, 'm');
      case 'scale':
        return line('Scale of the rule', rule.scaleStandardUncertainty, '1');
      case 'end':
        return endIsRelative
          ? line('End correction from theory, over the radius', end.standardUncertainty, '1')
          : line('End correction, unknown', end.standardUncertainty, 'm');
      case 'wall':
        return {
          ...line(wallsRemoved ? 'Slowing by the walls' : 'Slowing by the walls, not removed', 0, 'm/s'),
          standardUncertainty: contributionMps,
        };
    }
  });
  return lines.sort((one, other) => other.contributionMps - one.contributionMps);
}

/**
 * Effective degrees of freedom of a sum of independent contributions.
 * @returns infinity never: at least one contribution has finitely many
 * @see Welch 1947 and Satterthwaite 1946; JCGM 100:2008, G.4.1
 */
export function effectiveDegreesOfFreedom(
  contributions: readonly { readonly contributionMps: number; readonly degreesOfFreedom: number }[],
): number {
  const square = contributions.reduce((sum, { contributionMps: u }) => sum + u * u, 0);
  const spread = contributions.reduce(
    (sum, { contributionMps: u, degreesOfFreedom }) => sum + u ** 4 / degreesOfFreedom,
    0,
  );
  // Where one exact mark leaves no uncertainty at all, the first line's degrees stand.
  return spread > 0 ? (square * square) / spread : (contributions.at(0)?.degreesOfFreedom ?? 1);
}
