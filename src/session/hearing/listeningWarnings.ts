import type { OfflineDetection } from '../../resonance/passages/offlineDetector.ts';
import { findSecondFork } from '../../resonance/secondFork.ts';
import type { SecondFork } from '../../resonance/secondFork.ts';
import { findTurns } from '../../resonance/forkTurns.ts';
import { MovingView } from '../../resonance/toneView.ts';
import type { SteadyTone } from '../../tone/steadyTone.ts';
import type { ToneSeries } from '../../tone/toneSeries.ts';
import type { ForkPitch, ListeningReport, ListeningWarning } from './listeningTypes.ts';

/** Correlation of level and room from which a gain must be riding on the sound. Simulated rooms: never below −0.3. */
const PUMPING = -0.3;
/** The same in the middle of a listening, which has seen less: of 200 simulated recordings without such a gain none. */
const PUMPING_SO_FAR = -0.4;
const LEAST_SO_FAR_S = 10;
/** Largest sample below which the capture wastes all but 8 of its 16 bits: 0.4 % of full scale. */
const FAINT = 0.004;
/** Times through silence in one sounding: once may be the dip beside a resonance. */
const LEAST_TURNS = 2;
/** Nearer to a flagged resonance than this, a dip is its own, s. */
const OWN_DIP_S = 0.6;
/** A column needs three times its ring-up, some 40 ms, to show its level. */
const TOO_FAST_S = 0.15;

/** What the samples themselves say, beside the stages' findings. */
export interface HeardSamples {
  readonly series: ToneSeries;
  /** Largest sample's size, 1 = full scale. */
  readonly largest: number;
  /** The strongest steady line around the fork's pitch. */
  readonly steadyTone: SteadyTone | null;
  /** See LevelRoomCorrelation. */
  readonly roomCorrelation: number | null;
}

/** Warnings that a finished listening gives rise to, apart from clipping and silence. */
export function listeningWarnings(
  report: Omit<ListeningReport, 'warnings'>,
  fork: ForkPitch,
  found: OfflineDetection,
  heard: HeardSamples,
): ListeningWarning[] {
  const gap = gapWarning(heard.series);
  if (report.durationS < 1) {
    return [{ code: 'too-short', timeS: null }, ...gap];
  }
  const isSilent = heard.largest === 0;
  const about = isSilent
    ? []
    : [...faintWarning(heard.largest), ...pumpingWarning(heard.roomCorrelation, PUMPING)];
  if (report.fork.measuredHz === null) return [noForkWarning(fork, heard.steadyTone), ...about, ...gap];
  return [
    ...offStampWarning(report, fork),
    ...turnOrBeatWarning(report, found, heard.series),
    ...fastWarning(report),
    ...about,
    ...gap,
  ];
}

function noForkWarning({ nominalHz, toleranceHz }: ForkPitch, other: SteadyTone | null): ListeningWarning {
  const isBeyond = other !== null && Math.abs(other.offsetHz) > toleranceHz;
  const otherHz = isBeyond ? nominalHz + other.offsetHz : null;
  return { code: 'no-fork-heard', nominalHz, toleranceHz, otherHz, timeS: null };
}

function offStampWarning(report: Omit<ListeningReport, 'warnings'>, fork: ForkPitch): ListeningWarning[] {
  const { measuredHz, standardUncertaintyHz } = report.fork;
  if (measuredHz === null) return [];
  const off = measuredHz - fork.nominalHz;
  // What makers grant: 0.25 % or 1 Hz (common practice, no source).
  const limit = Math.max(1, 0.0025 * fork.nominalHz);
  if (Math.abs(off) <= limit + 2 * (standardUncertaintyHz ?? 0)) return [];
  return [{ code: 'off-stamp', measuredHz, offsetHz: off, timeS: null }];
}

/** A turned fork's nulls look like beats to the search for a second fork, so the turns come first. */
function turnOrBeatWarning(
  report: Omit<ListeningReport, 'warnings'>,
  found: OfflineDetection,
  series: ToneSeries,
): ListeningWarning[] {
  const { rateHz } = series;
  const view = new MovingView(series);
  for (const { from, to } of found.soundings) {
    view.show(from, to, found.offsetHz);
    const turns = findTurns(view, 0, to - from)
      .map((turn) => (from + turn) / rateHz)
      .filter((turnS) => report.resonances.every(({ timeS }) => Math.abs(timeS - turnS) > OWN_DIP_S));
    if (turns.length < LEAST_TURNS) continue;
    return [{ code: 'fork-turned', turns: turns.length, timeS: turns[0] }];
  }
  const other = strongestSecondFork(report, found, series);
  if (other === null) return [];
  return [{ code: 'beating', offsetHz: other.offsetHz, timeS: other.middle / rateHz }];
}

/** Looks in each sounding's stretches between strike, passages and damping. */
function strongestSecondFork(
  report: Omit<ListeningReport, 'warnings'>,
  { offsetHz, soundings }: OfflineDetection,
  series: ToneSeries,
): SecondFork | null {
  let strongest: SecondFork | null = null;
  const rate = series.rateHz;
  const view = new MovingView(series);
  for (const { from, to } of soundings) {
    let start = from + Math.round(0.8 * rate);
    const end = to - Math.round(0.4 * rate);
    const stops = report.resonances
      .map(({ timeS, halfPowerStartS, halfPowerEndS }) => {
        const reachS = Math.max(0.5, 1.2 * (halfPowerEndS - halfPowerStartS));
        return [Math.round((timeS - reachS) * rate), Math.round((timeS + reachS) * rate)] as const;
      })
      .filter(([, until]) => until > start);
    for (const [stop, next] of [...stops, [end, end] as const]) {
      view.show(start, Math.max(start, Math.min(stop, end)), offsetHz);
      const other = findSecondFork(view, 0, view.length);
      if (other !== null && (strongest === null || other.levelDb > strongest.levelDb)) {
        strongest = { ...other, middle: start + other.middle };
      }
      start = next;
    }
  }
  return strongest;
}

function fastWarning(report: Omit<ListeningReport, 'warnings'>): ListeningWarning[] {
  const widths = report.resonances.map((r) => r.halfPowerEndS - r.halfPowerStartS).sort((a, b) => a - b);
  const middle = widths[(widths.length - 1) >> 1];
  if (widths.length < 2 || middle === undefined || middle >= TOO_FAST_S) return [];
  return [{ code: 'slide-too-fast', halfPowerS: middle, timeS: null }];
}

/**
 * Is an automatic gain at work in what was heard so far?
 * @param correlation  see LevelRoomCorrelation
 * @returns one warning or none
 */
export const pumpingSoFar = (series: ToneSeries, correlation: number | null): ListeningWarning[] =>
  series.length < LEAST_SO_FAR_S * series.rateHz ? [] : pumpingWarning(correlation, PUMPING_SO_FAR);

function pumpingWarning(correlation: number | null, limit: number): ListeningWarning[] {
  if (correlation === null || correlation > limit) return [];
  return [{ code: 'gain-pumping', timeS: null }];
}

function faintWarning(largest: number): ListeningWarning[] {
  if (largest >= FAINT) return [];
  return [{ code: 'too-faint', largest, timeS: null }];
}

/** Tells of lost sound. @returns one warning or none */
export function gapWarning(series: ToneSeries): ListeningWarning[] {
  const first = series.gaps[0];
  if (first === undefined) return [];
  // Each loss is marked at both its ends.
  return [{ code: 'gap', losses: Math.ceil(series.gaps.length / 2), timeS: first / series.rateHz }];
}
