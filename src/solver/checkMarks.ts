import { speedOfSound } from '../air/speedOfSound.ts';
import type { AirState, SolverMark, SolverWarning } from './solution.ts';

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
  const faultsOfAir = new Map<AirState, string | null>();
  const faultIn = (air: AirState): string | null => {
    const known = faultsOfAir.get(air);
    if (known !== undefined) return known;
    const fault = faultOfAir(air);
    faultsOfAir.set(air, fault);
    return fault;
  };
  for (const mark of marks) {
    const fault = faultOf(mark, faultIn);
    if (fault === null) usable.push(mark);
    else faults.push({ code: 'bad-mark', message: `${mark.key} is not used: ${fault}.` });
  }
  return { usable, faults };
}

function faultOf(mark: SolverMark, faultIn: (air: AirState) => string | null): string | null {
  const within = (name: string, value: number, lowest: number, highest: number): string | null =>
    value >= lowest && value <= highest ? null : `its ${name} must be ${lowest}..${highest}, got ${value}`;
  const { radiusM, otherRadiusM, otherLengthM, order, air } = mark;
  return (
    within('pitch in Hz', mark.frequencyHz, 1, 100_000) ??
    within('pitch’s uncertainty in Hz', mark.frequencyStandardUncertaintyHz, 0, mark.frequencyHz) ??
    within('length in m', mark.lengthM, 1e-4, 100) ??
    (otherLengthM === null ? null : within('other length in m', otherLengthM, 1e-4, 100)) ??
    within('length’s uncertainty in m', mark.lengthStandardUncertaintyM, 1e-6, 10) ??
    (radiusM === null ? null : within('tube’s radius in m', radiusM, 5e-4, 1)) ??
    (otherRadiusM === null ? null : within('tube’s other radius in m', otherRadiusM, 5e-4, 1)) ??
    (order === null || (Number.isInteger(order) && order >= 1 && order <= 10_000)
      ? null
      : `its order must be a whole number above 0, got ${order}`) ??
    (air === null ? null : faultIn(air))
  );
}

function faultOfAir(air: AirState): string | null {
  if (!(air.temperatureC >= -30 && air.temperatureC <= 80)) {
    return `its air temperature must be -30..80 °C, got ${air.temperatureC}`;
  }
  try {
    const { speedMps, standardUncertaintyMps } = speedOfSound(air);
    return speedMps > 0 && Number.isFinite(standardUncertaintyMps) ? null : 'its air is out of range';
  } catch (error) {
    return `its air is out of range (${error instanceof Error ? error.message : String(error)})`;
  }
}
