import { UNKNOWN_END_M } from '../air/mouth.ts';
import type { MarkFault, OrderGap, OtherExplanation, SolverWarning } from '../solver/solverWarning.ts';
import { words } from './inUse.ts';
import type { NameMark } from './markNames.ts';
import { listed } from './lists.ts';
import { fixed, hertz } from './numbers.ts';
import { outlierCauseWords } from './outlierCauses.ts';

/** Of a long list a reader is shown so many. */
const MOST_DOUBTFUL = 4;
const MOST_NAMED = 6;

/** What the user should know before trusting a result, or why there is none, each in its sentences. */
export function solverWarningWords(
  warnings: readonly SolverWarning[],
  nameMark: NameMark,
): readonly string[] {
  return warnings.map((warning) => solverWarningMessage(warning, nameMark));
}

export function solverWarningMessage(warning: SolverWarning, nameMark: NameMark): string {
  const named = (keys: readonly string[]): string => listed(keys.slice(0, MOST_NAMED).map(nameMark));
  switch (warning.code) {
    case 'no-marks':
      return 'There is no mark with a usable length yet. Mark a resonance and read its length.';
    case 'no-orders':
      return 'No assignment of orders fits these marks.';
    case 'contradiction':
      return 'With these orders longer columns would have shorter waves. Check the lengths and the orders that were set.';
    case 'bad-mark':
      return `${nameMark(warning.key)} is not used: ${markFaultWords(warning.fault)}.`;
    case 'outlier':
      return `${nameMark(warning.key)} is left out of the fit. ${outlierCauseWords(warning.cause)}`;
    case 'inconsistent':
      return `The marks contradict each other and can’t tell which of ${named(warning.keys)} is wrong. Repeat these.`;
    case 'bracket-wide':
      return `The two lengths of ${nameMark(warning.key)} are so far apart that they tell little.`;
    case 'nothing-fits':
      return `Most of these lengths lie on no resonance of one speed and end correction. Check the unit of the lengths${warning.hasDiameter ? ' and of the diameter' : ''}, the fork and the ends before using the result.`;
    case 'column-type':
      return `These lengths don’t fit a column ${words.endsLong[warning.notedEnds]}, but do fit one ${words.endsLong[warning.fittingEnds]}. Check which ends were open.`;
    case 'length-unit':
      return `These lengths don’t fit as they are, but their numbers do fit in ${warning.unit}. Check the unit.`;
    case 'order-ambiguous': {
      const shown = warning.marks
        .slice(0, MOST_DOUBTFUL)
        .map(({ key, order, orderConfidence, runnerUpOrder }) => {
          const rival = runnerUpOrder === null ? '' : `, else ${runnerUpOrder}`;
          return `${nameMark(key)}: order ${order} (${fixed(orderConfidence * 100, 0)} %)${rival}`;
        });
      return `More than one assignment of orders fits: ${listed(shown)}. Mark a neighbouring resonance, or set the order.`;
    }
    case 'order-doubtful':
      return `The order that was set for ${named(warning.keys)} doesn’t fit air in this tube. Leave it to the bench, or check the fork.`;
    case 'skipped-orders':
      return `No mark at ${listed(warning.gaps.slice(0, MOST_NAMED).map(gapWords))}. Was a resonance missed?`;
    case 'other-explanation': {
      const shown = warning.explanations.map(
        (one) => `${otherExplanationWords(one)} (${fixed(100 * one.share, 0)} %)`,
      );
      return `These numbers make sense otherwise, too: ${listed(shown)}; as noted ${fixed(100 * warning.shareAsNoted, 0)} %. Check fork, unit and gas, or mark the first resonance.`;
    }
    case 'exact-repeats':
      return `${warning.copies === 1 ? 'One mark is' : `${warning.copies} marks are`} the same as another in everything and counted once. Pasted twice? Leave ${warning.copies === 1 ? 'it' : 'them'} out. Read twice? Say when in the table, under made_at.`;
    case 'forks-alike':
      return `${listed(warning.frequenciesHz.map((hz) => `${hertz(hz)} Hz`))} are taken for one fork, written in two ways. If these are two forks, measure them and state fork_uncertainty_hz.`;
    case 'tube-too-wide':
      return `A tube ${fixed(1000 * warning.diameterM, 0)} mm wide is too wide for ${hertz(warning.frequencyHz)} Hz: across it sound is no plane wave any more (ka = ${fixed(warning.ka, 1)}), and theory’s end correction doesn’t hold. Take a narrower tube or a lower fork.`;
    case 'unchecked':
      return warning.isAll
        ? 'Nothing in these marks could show that one was misread: two lengths always fit. A third resonance would show it.'
        : `Nothing here could show that ${named(warning.keys)} was misread. Mark one more resonance, or read it again.`;
    case 'unusual-temperature': {
      const { temperatureC, isCold } = warning;
      const stands =
        temperatureC === null
          ? `No air is as ${isCold ? 'cold' : 'warm'} as this speed would need`
          : `This is the speed of sound in air of ${fixed(temperatureC, 0)} °C`;
      return `${stands}. Was the room so ${isCold ? 'cold' : 'warm'}? If not, check the fork’s frequency, the lengths’ unit and the gas.`;
    }
    case 'scatter':
      return `The lengths scatter ${fixed(warning.factor, 1)} times as much as was stated or taken for them; the result’s uncertainty is widened.`;
    case 'end-correction-implausible': {
      const { endCorrectionM, endCorrectionRatio } = warning;
      const shown = `${fixed(endCorrectionM * 1000, 1)} mm`;
      if (endCorrectionRatio === null)
        return `The end correction comes out as ${shown}. Check the zero of the rule and the ends.`;
      return `The end correction comes out as ${shown}, ${fixed(endCorrectionRatio, 2)} radii where about 0.6 is usual. Check the zero of the rule, the diameter, and the ends.`;
    }
    case 'speed-implausible':
      return `${fixed(warning.speedMps, 1)} m/s is outside of ${fixed(warning.lowestMps, 0)}–${fixed(warning.highestMps, 0)} m/s. Check the fork’s pitch and the orders; the gas is taken for air.`;
    case 'differs-from-theory': {
      const { differenceMps, agreeingForkHz } = warning;
      const fork =
        agreeingForkHz === null ? '' : ` A fork of ${hertz(agreeingForkHz)} Hz would agree: was it that one?`;
      return `The result is ${fixed(Math.abs(differenceMps), 1)} m/s ${differenceMps > 0 ? 'above' : 'below'} theory for this air, more than both uncertainties allow. Check what is at the mouth, the lengths and the rule’s zero, then the thermometer and the fork’s frequency.${fork}`;
    }
    case 'implausible':
      return 'Speed and end correction together are unusual for air in a tube.';
    case 'too-few-marks':
      return 'One mark can’t tell the end correction from the wave. Mark a second resonance.';
    case 'end-correction-from-theory':
      return 'The marks alone don’t give the end correction well. What is known of the tube’s mouth is used, with its uncertainty.';
    case 'end-correction-unknown':
      return `The marks don’t give the end correction and no diameter is given. ${fixed(1000 * UNKNOWN_END_M.expected, 0)} mm is taken, as in usual tubes, give or take ${fixed(2000 * UNKNOWN_END_M.standardUncertainty, 0)} mm.`;
    case 'no-diameter':
      return 'No diameter is given, so the slowing by the walls (0.2 to 1 %) is not removed; its uncertainty is in the result.';
    case 'some-diameters-missing':
      return 'Where no diameter is given, the mean of the others is used.';
    case 'some-temperatures-missing':
      return 'Where no air temperature is given, the mean of the others is used.';
    case 'no-temperature': {
      const stands =
        warning.temperatureC === null
          ? ''
          : ` If the gas is air, this speed stands for ${fixed(warning.temperatureC, 0)} °C, give or take ${fixed(Math.max(warning.expandedUncertaintyC, 1), 0)} °C.`;
      return `No air temperature is given, so there is no comparison with theory.${stands}`;
    }
    case 'air-beyond-formula':
      return 'This air lies outside of 0–30 °C and 750–1020 hPa, where theory’s formula was checked; its uncertainty is widened.';
  }
}

function otherExplanationWords(explanation: OtherExplanation): string {
  switch (explanation.kind) {
    case 'unit':
      return `lengths in ${explanation.unit}`;
    case 'fork':
      return `a fork of ${hertz(explanation.fittingHz)} Hz`;
    case 'gas':
      return `${words.gasNames[explanation.gas]} in the tube`;
  }
}

function gapWords({ frequencyHz, ends, orders }: OrderGap): string {
  return `order ${listed(orders.slice(0, MOST_NAMED).map(String))} (${hertz(frequencyHz)} Hz, ${words.endsShort[ends]})`;
}

const QUANTITIES: Readonly<Record<Extract<MarkFault, { code: 'out-of-range' }>['quantity'], string>> = {
  frequencyHz: 'pitch in Hz',
  frequencyStandardUncertaintyHz: 'pitch’s uncertainty in Hz',
  lengthM: 'length in m',
  otherLengthM: 'other length in m',
  lengthStandardUncertaintyM: 'length’s uncertainty in m',
  radiusM: 'tube’s radius in m',
  otherRadiusM: 'tube’s other radius in m',
  temperatureC: 'air temperature',
};

function markFaultWords(fault: MarkFault): string {
  switch (fault.code) {
    case 'out-of-range': {
      const { quantity, lowest, highest, value } = fault;
      const unit = quantity === 'temperatureC' ? ' °C' : '';
      return `its ${QUANTITIES[quantity]} must be ${lowest}..${highest}${unit}, got ${value}`;
    }
    case 'another-gas':
      return `it was taken in ${words.fillingNames[fault.filling]} and the first one in ${words.fillingNames[fault.others]}: solve each gas by itself`;
    case 'order-not-whole':
      return `its order must be a whole number above 0, got ${fault.order}`;
    case 'air': {
      if (fault.fault === null) return 'its air is out of range';
      const { quantity, lowest, highest, value } = fault.fault;
      return `its air is out of range (${quantity} must be ${lowest}..${highest}, got ${value})`;
    }
  }
}
