import type { Filling } from '../air/gases.ts';
import { speedOfSound } from '../air/speedOfSound.ts';
import { OutOfRange } from '../numeric/requireInRange.ts';
import type { AirState, SolverMark } from './solution.ts';
import type { MarkFault, SolverWarning } from './solverWarning.ts';

/**
 * Marks that can be used, and for each other one what is wrong with it. These bounds keep the arithmetic sound; what
 * the bench takes lies within them.
 */
export function checkMarks(marks: readonly SolverMark[]): {
  readonly usable: readonly SolverMark[];
  readonly faults: readonly SolverWarning[];
} {
  const usable: SolverMark[] = [];
  const faults: SolverWarning[] = [];
  // Marks of one place share their air, which is then looked at once.
  const faultsOfAir = new Map<AirState, MarkFault | null>();
  const faultIn = (air: AirState): MarkFault | null => {
    const known = faultsOfAir.get(air);
    if (known !== undefined) return known;
    const fault = faultOfAir(air);
    faultsOfAir.set(air, fault);
    return fault;
  };
  for (const mark of marks) {
    const fault = faultOf(mark, faultIn) ?? faultOfGas(mark, usable.at(0));
    if (fault === null) usable.push(mark);
    else faults.push({ code: 'bad-mark', key: mark.key, fault });
  }
  return { usable, faults };
}

/** One speed fits all marks, so they are of one gas: the first mark's. */
function faultOfGas(mark: SolverMark, first: SolverMark | undefined): MarkFault | null {
  const filling = fillingOf(mark);
  const others = first === undefined ? filling : fillingOf(first);
  return filling === others ? null : { code: 'another-gas', filling, others };
}

const fillingOf = ({ air }: SolverMark): Filling => air?.filling ?? 'air';

function faultOf(mark: SolverMark, faultIn: (air: AirState) => MarkFault | null): MarkFault | null {
  const { radiusM, otherRadiusM, otherLengthM, order, air } = mark;
  return (
    outside('frequencyHz', mark.frequencyHz, 1, 100_000) ??
    outside('frequencyStandardUncertaintyHz', mark.frequencyStandardUncertaintyHz, 0, mark.frequencyHz) ??
    outside('lengthM', mark.lengthM, 1e-4, 100) ??
    (otherLengthM === null ? null : outside('otherLengthM', otherLengthM, 1e-4, 100)) ??
    outside('lengthStandardUncertaintyM', mark.lengthStandardUncertaintyM, 1e-6, 10) ??
    (radiusM === null ? null : outside('radiusM', radiusM, 5e-4, 1)) ??
    (otherRadiusM === null ? null : outside('otherRadiusM', otherRadiusM, 5e-4, 1)) ??
    (order === null || (Number.isInteger(order) && order >= 1 && order <= 10_000)
      ? null
      : { code: 'order-not-whole', order }) ??
    (air === null ? null : faultIn(air))
  );
}

function outside(
  quantity: Extract<MarkFault, { code: 'out-of-range' }>['quantity'],
  value: number,
  lowest: number,
  highest: number,
): MarkFault | null {
  return value >= lowest && value <= highest
    ? null
    : { code: 'out-of-range', quantity, lowest, highest, value };
}

function faultOfAir(air: AirState): MarkFault | null {
  const fault = outside('temperatureC', air.temperatureC, -30, 80);
  if (fault !== null) return fault;
  try {
    const { speedMps, standardUncertaintyMps } = speedOfSound(air);
    return speedMps > 0 && Number.isFinite(standardUncertaintyMps) ? null : { code: 'air', fault: null };
  } catch (error) {
    if (!(error instanceof OutOfRange)) throw error;
    const { quantity, lowest, highest, value } = error;
    return { code: 'air', fault: { quantity, lowest, highest, value } };
  }
}
