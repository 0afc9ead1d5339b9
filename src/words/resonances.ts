import type { Resonance } from '../session/hearing/listeningTypes.ts';
import { words } from './inUse.ts';
import { plainFixed } from './numbers.ts';

/** The last digit shown of a phase's turn, degrees. */
const PHASE_STEP_DEG = 10;

/** Why a resonance was found, in one line; kept with its mark, and written by the command line. */
export function resonanceReason({
  riseDb,
  aboveRoomDb,
  phaseSwingRad,
}: Pick<Resonance, 'riseDb' | 'aboveRoomDb' | 'phaseSwingRad'>): string {
  const degrees = Math.round((phaseSwingRad * 180) / Math.PI / PHASE_STEP_DEG) * PHASE_STEP_DEG;
  return words.resonanceWhy(plainFixed(riseDb, 0), plainFixed(aboveRoomDb, 0), degrees);
}
