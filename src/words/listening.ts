import type { UnheardPitch } from '../capture/soundSource.ts';
import type { ListeningReport, ListeningWarning } from '../session/hearing/listeningTypes.ts';
import type { FaultWords } from './faultWords.ts';
import { words } from './inUse.ts';
import { either } from './lists.ts';
import { fixed, hertz, kilohertz, percent } from './numbers.ts';
import { channelWords } from './soundChannel.ts';

/** What a listener should know, with what to do about it. */
export function listeningWarningWords(warning: ListeningWarning): string {
  const { stretch } = warning;
  const said = findingWords(warning);
  return stretch === undefined
    ? said
    : words.listening.between(fixed(stretch.fromS, 0), fixed(stretch.toS, 0), said);
}

/**
 * The warnings of a whole report, each with its code. What reads the same of every stretch from the beginning to the
 * end is said once, without its stretches.
 */
export function reportWarnings({
  warnings,
  durationS,
}: Pick<ListeningReport, 'warnings' | 'durationS'>): readonly {
  readonly code: ListeningWarning['code'];
  readonly message: string;
}[] {
  return warnings.flatMap((warning, index) => {
    const { code } = warning;
    const said = findingWords(warning);
    const same = warnings.filter((other) => other.code === code && findingWords(other) === said);
    if (!coversAll(same, durationS)) return [{ code, message: listeningWarningWords(warning) }];
    return warnings.indexOf(same[0] ?? warning) === index ? [{ code, message: said }] : [];
  });
}

/** Whether stretches follow each other without a gap from the beginning to the end. */
function coversAll(warnings: readonly ListeningWarning[], durationS: number): boolean {
  let toS = 0;
  for (const { stretch } of warnings) {
    if (stretch === undefined || stretch.fromS > toS) return false;
    toS = stretch.toS;
  }
  return toS >= durationS;
}

/** Where the high band begins that a sound may lack (session/hearing/signalHealth.ts), Hz. */
const HIGH_BAND_HZ = 16_000;

function findingWords(warning: ListeningWarning): string {
  const said = words.listening;
  switch (warning.code) {
    case 'no-fork-heard': {
      const nominal = hertz(warning.nominalHz);
      const tolerance = fixed(warning.toleranceHz, 1);
      if (warning.otherHz === null) return said.noFork(tolerance, nominal);
      return said.otherFork(tolerance, nominal, fixed(warning.otherHz, 0));
    }
    case 'off-stamp': {
      const { measuredHz, offsetHz } = warning;
      return said.offStamp(fixed(measuredHz, 2), fixed(Math.abs(offsetHz), 2), offsetHz > 0);
    }
    case 'beating':
      return said.beating(fixed(Math.abs(warning.offsetHz), 2), warning.offsetHz > 0);
    case 'fork-turned':
      return said.forkTurned(warning.turns, fixed(warning.timeS, 1));
    case 'slide-too-fast':
      return warning.timeS === null
        ? said.tooFast(fixed(warning.halfPowerS, 2), said.slower)
        : said.tooFastAt(fixed(warning.timeS, 1), said.slower);
    case 'clipping':
      return warning.limit === null
        ? said.clipping(warning.times)
        : said.overdriven(percent(warning.limit), warning.times);
    case 'too-faint':
      return said.tooFaint(fixed(100 * warning.largest, 2));
    case 'gain-pumping':
      return said.gainPumping;
    case 'too-short':
      return said.tooShort;
    case 'silent':
      return said.silent;
    case 'gap':
      return said.gap(warning.losses, fixed(warning.timeS, 1));
    case 'dropouts':
      return warning.timeS === null
        ? said.dropouts(warning.times)
        : said.dropoutsFrom(warning.times, fixed(warning.timeS, 1));
    case 'narrow-band':
      return said.narrowBand(kilohertz(warning.edgeHz));
    case 'high-band-missing':
      return said.highBandMissing(kilohertz(HIGH_BAND_HZ));
    case 'floor-fell':
      return said.floorFell(fixed(warning.fallDb, 0));
    case 'offset':
      return said.offset(fixed(100 * Math.abs(warning.offset), 1));
    case 'hum':
      return said.hum(hertz(warning.mainsHz), fixed(warning.levelDb, 0));
    case 'cut-off':
      return said.cutOff;
    case 'one-channel':
      return channelWords(warning.reason);
  }
}

/** Sample rates at which every fork of the page is heard, and which every device offers, Hz. */
const USUAL_RATES = ['44 100', '48 000'];

/** Why a frequency can’t be heard at a sample rate, and what to do. */
export function unheardPitchWords(fault: UnheardPitch): FaultWords {
  const { sampleRateHz, lowestHz, highestHz } = fault;
  const rates = either(USUAL_RATES);
  if (fault.unheard === 'sample-rate') {
    const { what, advice } = words.unheardFrequency.sampleRate;
    return { what: what(sampleRateHz, lowestHz, highestHz), advice: advice(rates) };
  }
  const { what, advice } = words.unheardFrequency.frequency;
  return {
    what: what(hertz(fault.pitchHz), sampleRateHz, lowestHz, Math.floor(highestHz)),
    advice: advice(rates),
  };
}
