import { stepsThatAre } from '../../capture/processingSteps.ts';
import type { CaptureSettings } from '../../capture/soundSource.ts';
import type { Stopper } from '../../notebook/experiment.ts';
import { words } from '../inUse.ts';
import { fixed, stampedHertz } from '../numbers.ts';

/** The sound's rate, and whether it comes as it is; what to do about one that doesn't stands elsewhere. */
export function soundWords(settings: CaptureSettings, sampleRateHz: number): string {
  const worst = (['on', 'unknown'] as const).find((state) => stepsThatAre(state, settings).length > 0);
  return words.source.rate(fixed(sampleRateHz / 1000, 1), words.source.processing[worst ?? 'off']);
}

/** The rise above the room as a large number. */
export function riseWords(riseDb: number): string {
  return fixed(riseDb, 0);
}

/** How long ago the way back was heard. */
export function heardAgoWords(ageS: number): string {
  return words.wayBack.heardAgo(fixed(Math.max(1, ageS), 0));
}

/** A fork by what is stamped on it. */
export function stampedForkWords(nominalHz: number): string {
  return words.now.hertz(stampedHertz(nominalHz));
}

/** The side, and what to do, in words of the apparatus in use. @param halfWidths  above 0: too long */
export function wayBackWords(halfWidths: number, stopper: Stopper): string {
  const { off, tooLong, tooShort, moves } = words.wayBack;
  return halfWidths > 0 ? off(tooLong, moves[stopper].tooLong) : off(tooShort, moves[stopper].tooShort);
}

/** The same for the ear. @param distanceM  null where the tube isn't known */
export function spokenWayBackWords(isTooLong: boolean, distanceM: number | null, stopper: Stopper): string {
  const { moves, spoken } = words.wayBack;
  const move = moves[stopper][isTooLong ? 'tooLong' : 'tooShort'];
  if (distanceM === null) return isTooLong ? spoken.tooLong(move) : spoken.tooShort(move);
  const by = spokenDistance(distanceM);
  return isTooLong ? spoken.tooLongBy(by, move) : spoken.tooShortBy(by, move);
}

/** Millimetres without their side; tenths where they count. */
export function distanceWords(distanceM: number): string {
  const mm = Math.abs(1000 * distanceM);
  return fixed(mm, mm < 9.95 ? 1 : 0);
}

/** For the ear coarser than for the eye, or a hand that moves would hear numbers only. */
function spokenDistance(distanceM: number): string {
  const mm = Math.abs(1000 * distanceM);
  const step = mm < 3 ? 0.5 : mm < 10 ? 1 : 5;
  return fixed(Math.max(Math.round(mm / step) * step, step), step < 1 ? 1 : 0);
}
