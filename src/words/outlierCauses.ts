import type { OutlierCause, OutlierExplanation } from '../solver/outlierCause.ts';
import { words } from './inUse.ts';
import { centimetres, hertz } from './numbers.ts';

/** What may have gone wrong with a mark that doesn't fit. */
export function outlierCauseWords(cause: OutlierCause): string {
  const said = words.outlierCause;
  if (cause.code === 'set-order') return said.setOrder(cause.setOrder, cause.fittingOrder);
  const { residualM, explanations } = cause;
  const causes = explanations.length === 0 ? said.unknown : explanations.map(explanationWords).join(said.or);
  const off = centimetres(Math.abs(residualM));
  return residualM > 0 ? said.tooLong(off, causes) : said.tooShort(off, causes);
}

function explanationWords(explanation: OutlierExplanation): string {
  const said = words.outlierCause;
  switch (explanation.code) {
    case 'misread':
      return said.misread[explanation.slipM];
    case 'swapped-digits':
      return said.swappedDigits;
    case 'slipped-point':
      return said.slippedPoint;
    case 'other-column':
      return said.otherColumn[explanation.ends](explanation.order);
    case 'other-fork':
      return said.otherFork(explanation.order, hertz(explanation.frequencyHz));
  }
}
