import { edit } from './edit.ts';
import type { Edit } from './edit.ts';

/** Single edits of what chooses orders and raises doubts, and of the air and the arithmetic below. */
export const JUDGEMENT_EDITS: readonly Edit[] = [
  // Orders and judgement.
  edit(
    'solver/searchOrders.ts',
    'const SKIPPED_ORDER_PENALTY = 0.3;',
    'const SKIPPED_ORDER_PENALTY = 0;',
    'orders that were passed over cost nothing',
  ),
  edit(
    'solver/searchOrders.ts',
    'Math.log(0.9 * Math.exp(-0.5 * off * off) + 0.1)',
    'Math.log(0.5 * Math.exp(-0.5 * off * off) + 0.5)',
    'a thermometer that hardly counts',
  ),
  edit(
    'solver/findOutliers.ts',
    'const OUTLYING_SHIFT = 3.5;',
    'const OUTLYING_SHIFT = 6;',
    'outliers need six sigma',
  ),
  edit(
    'solver/findOutliers.ts',
    'const OUTLYING_SHIFT = 3.5;',
    'const OUTLYING_SHIFT = 1.5;',
    'good marks are blamed',
  ),
  edit(
    'solver/solve.ts',
    'Math.hypot(factor * standardUncertaintyMps, 2 * theory.standardUncertaintyMps)',
    'Math.hypot(factor * standardUncertaintyMps, theory.standardUncertaintyMps)',
    'E_n with one u of theory instead of two',
  ),
  edit(
    'solver/findWarnings.ts',
    'const ROOM_TEMPERATURES_C = [10, 35] as const;',
    'const ROOM_TEMPERATURES_C = [-20, 60] as const;',
    'air of 55 °C is no surprise',
  ),
  edit(
    'solver/solve.ts',
    'Math.min(lowest, 0.99 * theory.speedMps)',
    'lowest',
    'a cold store’s speed is implausible',
  ),
  edit('solver/otherExplanations.ts', 'fork: 3,', 'fork: 30,', 'another fork is never thought of'),
  edit('solver/otherExplanations.ts', 'gas: 4,', 'gas: 40,', 'another gas is never thought of'),
  edit(
    'solver/strangeOrders.ts',
    'const HIGHEST_FIRST_ORDER = 3;',
    'const HIGHEST_FIRST_ORDER = 30;',
    'a table may begin at any order',
  ),
  edit('air/gases.ts', 'heatRatio: 1.096', 'heatRatio: 1.396', 'γ of sulfur hexafluoride'),
  edit('air/gases.ts', 'molarMassKgPerMol: 0.039948', 'molarMassKgPerMol: 0.04994', 'molar mass of argon'),
  edit(
    'solver/compare.ts',
    '(a?.signedMps ?? 0) - (b?.signedMps ?? 0)',
    '(a?.signedMps ?? 0) + (b?.signedMps ?? 0)',
    'common errors add instead of cancelling',
  ),
  edit(
    'solver/pooledMean.ts',
    'return squares - degrees;',
    'return squares - degrees - 1;',
    'Paule and Mandel with n for n − 1',
  ),
  // Air and numbers.
  edit(
    'air/airState.ts',
    'export const THERMOMETER_STANDARD_UNCERTAINTY_C = 0.5;',
    'export const THERMOMETER_STANDARD_UNCERTAINTY_C = 0.1;',
    'a thermometer good to a tenth',
  ),
  edit(
    'air/airState.ts',
    'humidityStandardUncertaintyPct: 20,',
    'humidityStandardUncertaintyPct: 2,',
    'unread humidity known',
  ),
  edit(
    'air/speedOfSound.ts',
    'const FORMULA_UNCERTAINTY = 300e-6;',
    'const FORMULA_UNCERTAINTY = 30e-6;',
    'Cramer’s formula ten times better',
  ),
  edit('air/speedOfSound.ts', '0.603055 * t -\n', '0.603055 * t +\n', 'a sign of Cramer’s polynomial'),
  edit('air/wallLoss.ts', 'const excess = air.heatRatio - 1;', 'const excess = 0;', 'walls take no heat'),
  edit(
    'air/airProperties.ts',
    '1.846e-5 * (1 + 0.0025 * above)',
    '1.846e-5',
    'air’s viscosity at any temperature',
  ),
  edit(
    'air/loudestPlaceSpread.ts',
    'Math.sqrt(1 / square / (root * (1 + root)))',
    'Math.sqrt(1 / square / (root * (2 + root)))',
    'loudest places off by less',
  ),
  edit(
    'numeric/errorModel.ts',
    '(j === k ? 1 : 0) + dot(one, other)',
    'j === k ? 1 + dot(one, other) : 0',
    'common errors inverted one by one',
  ),
  edit(
    'numeric/chiSquared.ts',
    '0.999: 3.0902323',
    '0.999: 2.3263479',
    'once in a hundred for once in a thousand',
  ),
];
