import { UNKNOWN_END_M } from '../air/mouth.ts';
import type { MarkFault, OrderGap, OtherExplanation, SolverWarning } from '../solver/solverWarning.ts';
import type { LaterWords } from './catalogue.ts';
import { laterWords, words } from './inUse.ts';
import { listed } from './lists.ts';
import type { NameMark } from './markNames.ts';
import { fixed, hertz, percent, tidy } from './numbers.ts';
import { outlierCauseWords } from './outlierCauses.ts';

/** Of a long list a reader is shown so many. */
const MOST_DOUBTFUL = 4;
const MOST_NAMED = 6;
/** A thin rim's end correction over the inside radius, to one digit (Levine & Schwinger 1948). */
const USUAL_END_RADII = 0.6;
/** Part of the speed that the walls of a usual tube take, %. */
const USUAL_WALLS_PCT = { lowest: 0.2, highest: 1 };

/** What the user should know before trusting a result, or why there is none, each in its sentences. */
export function solverWarningWords(
  warnings: readonly SolverWarning[],
  nameMark: NameMark,
): readonly string[] {
  return warnings.map((warning) => solverWarningMessage(warning, nameMark));
}

export function solverWarningMessage(warning: SolverWarning, nameMark: NameMark): string {
  const said = laterWords.solverWarning;
  const named = (keys: readonly string[]): string => listed(keys.slice(0, MOST_NAMED).map(nameMark));
  switch (warning.code) {
    case 'no-marks':
      return said.noMarks;
    case 'no-orders':
      return said.noOrders;
    case 'contradiction':
      return said.contradiction;
    case 'bad-mark':
      return unusableMarkWords(nameMark(warning.key), warning.fault);
    case 'outlier':
      return said.outlier(nameMark(warning.key), outlierCauseWords(warning.cause));
    case 'inconsistent':
      return said.inconsistent(named(warning.keys));
    case 'bracket-wide':
      return said.bracketWide(nameMark(warning.key));
    case 'nothing-fits':
      return warning.hasDiameter ? said.nothingFitsDiameter : said.nothingFits;
    case 'column-type':
      return said.columnType[warning.fittingEnds];
    case 'length-unit':
      return said.lengthUnit(warning.unit);
    case 'order-ambiguous':
      return said.orderAmbiguous(
        listed(
          warning.marks
            .slice(0, MOST_DOUBTFUL)
            .map(({ key, order, orderConfidence, runnerUpOrder }) =>
              said.orderOf(nameMark(key), order, percent(orderConfidence), runnerUpOrder),
            ),
        ),
      );
    case 'order-doubtful':
      return said.orderDoubtful(named(warning.keys));
    case 'skipped-orders':
      return said.skippedOrders(listed(warning.gaps.slice(0, MOST_NAMED).map(gapWords)));
    case 'other-explanation':
      return said.otherExplanation(
        listed(warning.explanations.map((one) => said.odds(otherExplanationWords(one), percent(one.share)))),
        percent(warning.shareAsNoted),
      );
    case 'exact-repeats':
      return said.exactRepeats(warning.copies);
    case 'forks-alike':
      return said.forksAlike(listed(warning.frequenciesHz.map((hz) => said.hertz(hertz(hz)))));
    case 'tube-too-wide':
      return said.tubeTooWide(
        fixed(1000 * warning.diameterM, 0),
        hertz(warning.frequencyHz),
        fixed(warning.ka, 1),
      );
    case 'unchecked':
      return warning.isAll ? said.allUnchecked : said.unchecked(named(warning.keys));
    case 'unusual-temperature': {
      const { temperatureC, isCold } = warning;
      const how = isCold ? 'cold' : 'warm';
      return temperatureC === null ? said.speedOfNoAir[how] : said.speedOfAir[how](fixed(temperatureC, 0));
    }
    case 'scatter':
      return said.scatter(fixed(warning.factor, 1));
    case 'end-correction-implausible': {
      const { endCorrectionM, endCorrectionRatio } = warning;
      const shown = fixed(endCorrectionM * 1000, 1);
      return endCorrectionRatio === null
        ? said.endImplausible(shown)
        : said.endImplausibleInRadii(shown, fixed(endCorrectionRatio, 2), fixed(USUAL_END_RADII, 1));
    }
    case 'speed-implausible':
      return said.speedImplausible(
        fixed(warning.speedMps, 1),
        fixed(warning.lowestMps, 0),
        fixed(warning.highestMps, 0),
      );
    case 'differs-from-theory': {
      const { differenceMps, agreeingForkHz } = warning;
      const off = fixed(Math.abs(differenceMps), 1);
      const differs = differenceMps > 0 ? said.aboveTheory(off) : said.belowTheory(off);
      return agreeingForkHz === null ? differs : `${differs} ${said.agreeingFork(hertz(agreeingForkHz))}`;
    }
    case 'implausible':
      return said.implausible;
    case 'too-few-marks':
      return said.tooFewMarks;
    case 'end-correction-from-theory':
      return said.endFromTheory;
    case 'end-correction-unknown':
      return said.endUnknown(
        fixed(1000 * UNKNOWN_END_M.expected, 0),
        fixed(2000 * UNKNOWN_END_M.standardUncertainty, 0),
      );
    case 'no-diameter':
      return said.noDiameter(fixed(USUAL_WALLS_PCT.lowest, 1), fixed(USUAL_WALLS_PCT.highest, 0));
    case 'some-diameters-missing':
      return said.someDiametersMissing;
    case 'some-temperatures-missing':
      return said.someTemperaturesMissing;
    case 'no-temperature':
      return warning.temperatureC === null
        ? said.noTemperature
        : `${said.noTemperature} ${said.ifAir(fixed(warning.temperatureC, 0), fixed(Math.max(warning.expandedUncertaintyC, 1), 0))}`;
    case 'air-beyond-formula':
      return said.airBeyondFormula;
  }
}

function otherExplanationWords(explanation: OtherExplanation): string {
  const said = laterWords.solverWarning;
  switch (explanation.kind) {
    case 'unit':
      return said.otherUnit(explanation.unit);
    case 'fork':
      return said.otherFork(hertz(explanation.fittingHz));
    case 'gas':
      return said.otherGas(words.gasNames[explanation.gas]);
  }
}

function gapWords({ frequencyHz, ends, orders }: OrderGap): string {
  return laterWords.solverWarning.gap[ends](
    listed(orders.slice(0, MOST_NAMED).map(String)),
    hertz(frequencyHz),
  );
}

function unusableMarkWords(mark: string, fault: MarkFault): string {
  const said = laterWords.unusableMark;
  switch (fault.code) {
    case 'out-of-range':
      return outOfRangeWords(mark, fault.quantity, fault);
    case 'another-gas':
      return said.anotherGas(mark, words.fillingNames[fault.filling], words.fillingNames[fault.others]);
    case 'order-not-whole':
      return said.orderNotWhole(mark, tidy(fault.order));
    case 'air': {
      const quantity = AIR_QUANTITIES.find((one) => one === fault.fault?.quantity);
      return fault.fault === null || quantity === undefined
        ? said.air(mark)
        : outOfRangeWords(mark, quantity, fault.fault);
    }
  }
}

/** What the formula for the air may find out of range. */
const AIR_QUANTITIES = ['temperatureC', 'humidityPct', 'pressurePa'] as const;

function outOfRangeWords(
  mark: string,
  quantity: keyof LaterWords['unusableMark']['outOfRange'],
  { lowest, highest, value }: { readonly lowest: number; readonly highest: number; readonly value: number },
): string {
  return laterWords.unusableMark.outOfRange[quantity](mark, tidy(lowest), tidy(highest), tidy(value));
}
