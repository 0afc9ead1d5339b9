import { stampStandardUncertaintyHz } from '../marks/usualUncertainties.ts';
import { effectiveDegreesOfFreedom } from './effectiveDegreesOfFreedom.ts';
import type { Contribution, MarksFit } from './fitMarks.ts';
import type { Preparation, PreparedMark } from './prepareMarks.ts';
import type { BudgetLine, BudgetSource, Distribution } from './solution.ts';

/** The fit's contributions as lines of an uncertainty budget, largest first. */
export function speedBudget(preparation: Preparation, fit: MarksFit): readonly BudgetLine[] {
  const { rows, rule, endIsRelative, wallsRemoved } = preparation;
  const used = rows.filter((_, i) => fit.speedWeights[i] !== 0);
  const meanReadingM = Math.sqrt(used.reduce((sum, row) => sum + row.variance, 0) / Math.max(used.length, 1));
  const own = fit.contributions.filter(({ source }) => source !== 'loudest');
  const loudest = fit.contributions.filter(({ source }) => source === 'loudest');
  // Several setups are one line: nobody wants a line for each fork at each place.
  const parts = loudest.length === 0 ? own : [...own, together(loudest)];
  const lines = parts.map(({ source, group, contributionMps, degreesOfFreedom }): BudgetLine => {
    const line = (
      from: BudgetSource,
      standardUncertainty: number,
      unit: BudgetLine['unit'],
      distribution: Distribution = 'normal',
    ): BudgetLine => ({
      ...from,
      evaluation: source === 'reading' && fit.scatterFactor !== 1 ? 'A' : 'B',
      distribution,
      standardUncertainty,
      unit,
      sensitivity: standardUncertainty > 0 ? contributionMps / standardUncertainty : null,
      contributionMps,
      degreesOfFreedom,
    });
    switch (source) {
      case 'reading':
        return line({ source, isWidened: fit.scatterFactor !== 1 }, meanReadingM * fit.scatterFactor, 'm');
      case 'fork': {
        const isOfFork = (row: PreparedMark): boolean => row.fork === group;
        const { frequencyHz } = rows.filter(isOfFork)[0].mark;
        // Rows of one fork may state its uncertainty differently: the largest of those that count stands for all.
        const statedHz = used.filter(isOfFork).map(({ mark }) => mark.frequencyStandardUncertaintyHz);
        const largestHz = Math.max(0, ...statedHz);
        const isStamp = Math.abs(largestHz / stampStandardUncertaintyHz(frequencyHz) - 1) < 1e-9;
        return line({ source, frequencyHz }, largestHz, 'Hz', isStamp ? 'rectangular' : 'normal');
      }
      case 'loudest': {
        const loud = used.filter(({ located: { loudestUncertaintyM } }) => loudestUncertaintyM > 0);
        const squares = loud.reduce((sum, row) => sum + row.located.loudestUncertaintyM ** 2, 0);
        return line({ source }, Math.sqrt(squares / Math.max(loud.length, 1)), 'm', 'arcsine');
      }
      case 'zero':
        return line({ source }, rule.zeroStandardUncertaintyM, 'm');
      case 'scale':
        return line({ source }, rule.scaleStandardUncertainty, '1');
      case 'end':
        return line(
          { source, isFromTheory: endIsRelative },
          fit.constraint?.standardUncertainty ?? 0,
          endIsRelative ? '1' : 'm',
        );
      case 'wall':
        return {
          ...line({ source, isRemoved: wallsRemoved }, 0, 'm/s'),
          standardUncertainty: contributionMps,
        };
    }
  });
  return lines.sort((one, other) => other.contributionMps - one.contributionMps);
}

/** Independent contributions of one kind as one. */
function together(parts: readonly Contribution[]): Contribution {
  const contributionMps = Math.hypot(...parts.map((part) => part.contributionMps));
  return {
    ...parts[0],
    group: null,
    contributionMps,
    signedMps: contributionMps,
    degreesOfFreedom: effectiveDegreesOfFreedom(parts),
  };
}
