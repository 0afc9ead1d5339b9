import { plainFixed } from '../words/numbers.ts';
import type { SolvedTable } from './solveTable.ts';

/** The result of one table as a few lines for a person. */
export function solveSummary(file: string, result: SolvedTable): string {
  const lines = [
    file,
    `  speed of sound in free air  ${plainFixed(result.speedMps, 2)} m/s ± ${plainFixed(result.expandedUncertaintyMps, 2)} m/s (95 %, k = ${plainFixed(result.coverageFactor, 2)})`,
    `  end correction              ${plainFixed(result.endCorrectionM * 1000, 1)} mm ± ${plainFixed(result.endCorrectionStandardUncertaintyM * 1000, 1)} mm (standard, ${result.endCorrectionSource})`,
  ];
  const { theory, agreement } = result;
  if (theory !== null && agreement !== null) {
    lines.push(
      `  theory                      ${plainFixed(theory.speedMps, 2)} m/s ± ${plainFixed(theory.standardUncertaintyMps, 2)} m/s (standard); difference ${plainFixed(agreement.differenceMps, 2)} m/s, En ${plainFixed(agreement.normalisedError, 2)}`,
    );
  }
  lines.push('', '  row  order  confidence  residual / mm');
  for (const { row, order, orderConfidence, residualM, outlier, cause } of result.marks) {
    const columns = [
      String(row).padStart(5),
      String(order).padStart(7),
      `${plainFixed(orderConfidence * 100, 1)} %`.padStart(12),
      plainFixed(residualM * 1000, 2)
        .replace(/^-(0\.00)$/, '$1')
        .padStart(15),
    ];
    lines.push(columns.join('') + (outlier ? `  left out: ${cause ?? ''}` : ''));
  }
  for (const place of result.places ?? []) {
    const speed =
      place.speedMps === null || place.expandedUncertaintyMps === null
        ? 'no result'
        : `${plainFixed(place.speedMps, 2)} m/s ± ${plainFixed(place.expandedUncertaintyMps, 2)} m/s`;
    lines.push(`  place ${place.place === '' ? '(none)' : place.place}: ${speed}`);
  }
  lines.push('', ...result.warnings.map(({ code, message }) => `  ${code}: ${message}`), '');
  return lines.join('\n');
}
