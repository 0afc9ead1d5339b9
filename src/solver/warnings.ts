import { chiSquaredLimit } from './chiSquared.ts';
import type { MarksFit } from './fitMarks.ts';
import { isPlausible } from './findOutliers.ts';
import type { Judgement } from './findOutliers.ts';
import type { Preparation } from './prepareMarks.ts';
import { MISFIT_OF_NOISE } from './searchOrders.ts';
import type { OrderSearch, SpeedPrior } from './searchOrders.ts';
import type { Solution, SolvedMark, SolverWarning } from './solution.ts';
import { inWords, listed, pitch } from './wording.ts';

export interface Findings {
  readonly preparation: Preparation;
  readonly search: OrderSearch;
  readonly judgement: Judgement;
  readonly prior: SpeedPrior;
  readonly orders: readonly number[];
  readonly marks: readonly SolvedMark[];
  /** Column type that fits where the noted one doesn't; null where there is none. */
  readonly betterType: { readonly from: 'closed' | 'open'; readonly to: 'closed' | 'open' } | null;
  /** Unit in which the lengths' numbers fit where they don't as noted; null where there is none. */
  readonly betterUnit: string | null;
}

/** Where theory and practice of e over the radius end: thin rims 0.6, wide flanges 0.82, a fork near the mouth more. */
const USUAL_END: readonly [number, number] = [0.4, 0.95];
const DOUBTFUL_CONFIDENCE = 0.9;

/** Everything that the user should know before trusting the result, most serious first. */
export function writeWarnings(
  findings: Findings,
  solution: Omit<Solution, 'working' | 'warnings'>,
): readonly SolverWarning[] {
  return [
    ...aboutOrders(findings),
    ...aboutMarks(findings),
    ...aboutResult(findings, solution),
    ...aboutKnowledge(findings.preparation, findings.judgement.fit),
  ];
}

function aboutOrders(findings: Findings): SolverWarning[] {
  const { preparation, search, judgement, prior, marks, orders, betterType, betterUnit } = findings;
  const warnings: SolverWarning[] = [];
  if (search.marksMisfit > MISFIT_OF_NOISE * search.sampled) {
    warnings.push({
      code: 'nothing-fits',
      message:
        'Most of these lengths lie on no resonance of one speed and end correction. Check the unit of the lengths and of the diameter, the fork and the ends before using the result.',
    });
  }
  if (betterType !== null) {
    const name = (ends: 'closed' | 'open'): string =>
      ends === 'open' ? 'open at both ends' : 'closed at one end';
    warnings.push({
      code: 'column-type',
      message: `These lengths don’t fit a column ${name(betterType.from)}, but do fit one ${name(betterType.to)}. Check which ends were open.`,
    });
  }
  if (betterUnit !== null) {
    warnings.push({
      code: 'length-unit',
      message: `These lengths don’t fit as they are, but their numbers do fit in ${betterUnit}. Check the unit.`,
    });
  }
  const doubtful = marks.filter(
    ({ orderConfidence, outlier }) => orderConfidence < DOUBTFUL_CONFIDENCE && !outlier,
  );
  if (doubtful.length > 0) {
    const shown = doubtful.slice(0, 4).map(({ key, order, orderConfidence, runnerUp }) => {
      const rival = runnerUp === null ? '' : `, else ${runnerUp.order}`;
      return `${key}: order ${order} (${inWords(orderConfidence * 100, 0)} %)${rival}`;
    });
    warnings.push({
      code: 'order-ambiguous',
      message: `More than one assignment of orders fits: ${listed(shown)}. Mark a neighbouring resonance, or set the order.`,
    });
  }
  const isStrange = search.stretched === 'speed' || !isPlausible(preparation, judgement.fit, prior);
  const contradicted = preparation.rows.filter(
    ({ mark }, i) => mark.order !== null && (marks[i]?.outlier === true || isStrange),
  );
  if (contradicted.length > 0) {
    const keys = contradicted.slice(0, 6).map(({ mark }) => mark.key);
    warnings.push({
      code: 'order-doubtful',
      message: `The order that was set for ${listed(keys)} doesn’t fit air in this tube. Leave it to the bench, or check the fork.`,
    });
  }
  const gaps = skipped(preparation, orders);
  if (gaps.length > 0) {
    warnings.push({
      code: 'skipped-orders',
      message: `No mark at ${listed(gaps.slice(0, 6))}. Was a resonance missed?`,
    });
  }
  return warnings;
}

function skipped({ rows }: Preparation, orders: readonly number[]): string[] {
  const seen = new Map<string, { name: string; orders: Set<number> }>();
  for (const [i, row] of rows.entries()) {
    const key = `${row.fork} ${row.ends}`;
    const group = seen.get(key) ?? {
      name: `${pitch(row.mark.frequencyHz)} Hz, ${row.ends}`,
      orders: new Set<number>(),
    };
    group.orders.add(orders[i] ?? 1);
    seen.set(key, group);
  }
  return [...seen.values()].flatMap(({ name, orders: found }) => {
    const highest = Math.max(...found);
    const missing = Array.from({ length: highest }, (_, i) => i + 1).filter((order) => !found.has(order));
    return missing.length === 0 ? [] : [`order ${listed(missing.slice(0, 6).map(String))} (${name})`];
  });
}

function aboutMarks({ preparation, judgement, marks }: Findings): SolverWarning[] {
  const warnings: SolverWarning[] = marks
    .filter(({ outlier }) => outlier)
    .slice(0, 20)
    .map(({ key, cause }) => ({
      code: 'outlier',
      message: `${key} is left out of the fit. ${cause ?? ''}`.trim(),
    }));
  if (judgement.suspects.length > 0) {
    const keys = judgement.suspects.slice(0, 6).map((i) => preparation.rows[i]?.mark.key ?? '');
    warnings.push({
      code: 'inconsistent',
      message: `The marks contradict each other and can’t tell which of ${listed(keys)} is wrong. Repeat these.`,
    });
  }
  const { fit } = judgement;
  if (fit.degreesOfFreedom > 0 && fit.chiSquared > chiSquaredLimit(fit.degreesOfFreedom)) {
    warnings.push({
      code: 'scatter',
      message: `The lengths scatter ${inWords(Math.sqrt(fit.chiSquared / fit.degreesOfFreedom), 1)} times as much as their stated uncertainty; the result’s uncertainty is widened.`,
    });
  }
  for (const row of preparation.rows) {
    const { otherLengthM, lengthM, key } = row.mark;
    if (otherLengthM === null) continue;
    const widthM = Math.abs(otherLengthM - lengthM);
    if (widthM > 0.25 * row.halfWavePerSpeedS * fit.speedMps) {
      warnings.push({
        code: 'bracket-wide',
        message: `The two lengths of ${key} are so far apart that they tell little.`,
      });
    }
  }
  return warnings;
}

function aboutResult(
  { preparation, judgement, prior }: Findings,
  solution: Omit<Solution, 'working' | 'warnings'>,
): SolverWarning[] {
  const { fit } = judgement;
  const { endIsRelative, end } = preparation;
  const warnings: SolverWarning[] = [];
  const slack = 2.5 * fit.endUncertainty;
  const [lowest, highest] = endIsRelative ? USUAL_END : [end.lowest, end.highest];
  if (fit.mode === 'free' && (fit.end < lowest - slack || fit.end > highest + slack)) {
    const shown = `${inWords(solution.endCorrectionM * 1000, 1)} mm`;
    const ratio = endIsRelative ? `, ${inWords(fit.end, 2)} radii where about 0.6 is usual` : '';
    warnings.push({
      code: 'end-correction-implausible',
      message: `The end correction comes out as ${shown}${ratio}. Check the zero of the rule, the diameter, and the ends.`,
    });
  }
  const speedSlack = 3 * solution.standardUncertaintyMps;
  const { speedMps, agreement } = solution;
  const isOutside = speedMps < prior.lowestMps - speedSlack || speedMps > prior.highestMps + speedSlack;
  if (isOutside) {
    warnings.push({
      code: 'speed-implausible',
      message: `${inWords(speedMps, 1)} m/s is outside of ${inWords(prior.lowestMps, 0)}–${inWords(prior.highestMps, 0)} m/s. Check the fork’s pitch and the orders; the gas is taken for air.`,
    });
  }
  if (agreement !== null && Math.abs(agreement.normalisedError) > 1) {
    warnings.push({
      code: 'differs-from-theory',
      message: `The result is ${inWords(Math.abs(agreement.differenceMps), 1)} m/s ${agreement.differenceMps > 0 ? 'above' : 'below'} theory for this air, more than both uncertainties allow. Check the thermometer, the fork’s pitch and the rule.${pitchThatAgrees(preparation, solution)}`,
    });
  }
  if (!isOutside && warnings.length === 0 && !isPlausible(preparation, fit, prior)) {
    warnings.push({
      code: 'implausible',
      message: 'Speed and end correction together are unusual for air in a tube.',
    });
  }
  return warnings;
}

/** What one fork's pitch would have to be for the result to agree with theory, where it is off by more than a stamp can be. */
function pitchThatAgrees(
  { rows }: Preparation,
  { speedMps, theory }: Omit<Solution, 'working' | 'warnings'>,
): string {
  const pitches = new Set(rows.map(({ mark }) => mark.frequencyHz));
  const [hz] = pitches;
  if (pitches.size !== 1 || hz === undefined || theory === null) return '';
  const needed = theory.speedMps / speedMps;
  return Math.abs(needed - 1) < 0.01 ? '' : ` A fork of ${inWords(needed * hz, 0)} Hz would agree.`;
}

function aboutKnowledge(preparation: Preparation, fit: MarksFit): SolverWarning[] {
  const warnings: SolverWarning[] = [];
  const used = fit.speedWeights.filter((weight) => weight !== 0).length;
  if (used === 1) {
    warnings.push({
      code: 'too-few-marks',
      message: 'One mark can’t tell the end correction from the wave. Mark a second resonance.',
    });
  }
  if (fit.mode === 'theory') {
    warnings.push(
      preparation.endIsRelative
        ? {
            code: 'end-correction-from-theory',
            message: 'The marks don’t determine the end correction; theory’s is used, with its uncertainty.',
          }
        : {
            code: 'end-correction-unknown',
            message:
              'The marks don’t determine the end correction and no diameter is given; it is taken as zero and may be a centimetre.',
          },
    );
  }
  if (!preparation.wallsRemoved) {
    warnings.push({
      code: 'no-diameter',
      message:
        'No diameter is given, so the slowing by the walls (0.2 to 1 %) is not removed; its uncertainty is in the result.',
    });
  }
  if (preparation.someDiametersMissing) {
    warnings.push({
      code: 'some-diameters-missing',
      message: 'Where no diameter is given, the mean of the others is used.',
    });
  }
  if (preparation.someTemperaturesMissing) {
    warnings.push({
      code: 'some-temperatures-missing',
      message: 'Where no air temperature is given, the mean of the others is used.',
    });
  }
  if (preparation.theory === null) {
    warnings.push({
      code: 'no-temperature',
      message: 'No air temperature is given, so there is no comparison with theory.',
    });
  } else if (!preparation.theory.withinValidity) {
    warnings.push({
      code: 'air-beyond-formula',
      message:
        'This air lies outside of 0–30 °C and 750–1020 hPa, where theory’s formula was checked; its uncertainty is widened.',
    });
  }
  return warnings;
}
