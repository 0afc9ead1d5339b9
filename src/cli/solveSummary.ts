import type { SolvedTable } from './solveTable.ts';

/** The result of one table as a few lines for a person. */
export function solveSummary(file: string, result: SolvedTable): string {
  const lines = [
    file,
    `  speed of sound in free air  ${result.speedMps.toFixed(2)} m/s ± ${result.expandedUncertaintyMps.toFixed(2)} m/s (95 %, k = ${result.coverageFactor.toFixed(2)})`,
    `  end correction              ${(result.endCorrectionM * 1000).toFixed(1)} mm ± ${(result.endCorrectionStandardUncertaintyM * 1000).toFixed(1)} mm (standard, ${result.endCorrectionSource})`,
  ];
  const { theory, agreement } = result;
  if (theory !== null && agreement !== null) {
    lines.push(
      `  theory                      ${theory.speedMps.toFixed(2)} m/s ± ${theory.standardUncertaintyMps.toFixed(2)} m/s (standard); difference ${agreement.differenceMps.toFixed(2)} m/s, En ${agreement.normalisedError.toFixed(2)}`,
    );
  }
  lines.push('', '  row  order  confidence  residual / mm');
  for (const { row, order, orderConfidence, residualM, outlier, cause } of result.marks) {
    const columns = [
      String(row).padStart(5),
      String(order).padStart(7),
      `${(orderConfidence * 100).toFixed(1)} %`.padStart(12),
      (residualM * 1000)
        .toFixed(2)
        .replace(/^-(0\.00)$/, '$1')
        .padStart(15),
    ];
    lines.push(columns.join('') + (outlier ? `  left out: ${cause ?? ''}` : ''));
  }
  for (const place of result.places ?? []) {
    const speed =
      place.speedMps === null || place.expandedUncertaintyMps === null
        ? 'no result'
        : `${place.speedMps.toFixed(2)} m/s ± ${place.expandedUncertaintyMps.toFixed(2)} m/s`;
    lines.push(`  place ${place.place === '' ? '(none)' : place.place}: ${speed}`);
  }
  lines.push('', ...result.warnings.map(({ code, message }) => `  ${code}: ${message}`), '');
  return lines.join('\n');
}
