import type { OutlierCause, OutlierExplanation, RuleSlipM } from '../solver/outlierCause.ts';
import { centimetres, hertz } from './numbers.ts';

const SLIPS: Readonly<Record<RuleSlipM, string>> = {
  0.01: 'centimetre',
  0.05: 'half decimetre',
  0.1: 'decimetre',
  0.2: 'two decimetres',
  0.5: 'half metre',
  1: 'metre',
};

/** What may have gone wrong with a mark that doesn't fit. */
export function outlierCauseWords(cause: OutlierCause): string {
  if (cause.code === 'set-order') {
    return `Order ${cause.setOrder} was set, but the length fits order ${cause.fittingOrder}.`;
  }
  const { residualM, explanations } = cause;
  const off = `${centimetres(Math.abs(residualM))} cm too ${residualM > 0 ? 'long' : 'short'}`;
  return explanations.length === 0
    ? `${off}: read it again, or look for the resonance again.`
    : `${off}: ${explanations.map(explanationWords).join(' Or ')}`;
}

function explanationWords(explanation: OutlierExplanation): string {
  switch (explanation.code) {
    case 'misread':
      return `misread ${SLIPS[explanation.slipM]}?`;
    case 'swapped-digits':
      return 'two digits swapped?';
    case 'slipped-point':
      return 'decimal point slipped?';
    case 'other-column':
      return `it fits as order ${explanation.order} of ${explanation.ends === 'open' ? 'an open' : 'a closed'} column.`;
    case 'other-fork':
      return `it fits as order ${explanation.order} of the ${hertz(explanation.frequencyHz)} Hz fork: another fork than noted?`;
  }
}
