import type { UnheardPitch } from '../capture/soundSource.ts';
import type { ListeningReport, ListeningWarning } from '../session/hearing/listeningTypes.ts';
import type { FaultWords } from './faultWords.ts';
import { times } from './en/grammar.ts';
import { fixed, hertz, kilohertz, plainFixed } from './numbers.ts';
import { channelWords } from './soundChannel.ts';

/** Which side of a pitch another one is on. */
const side = (offsetHz: number): string => (offsetHz > 0 ? 'above' : 'below');

/** What a listener should know, with what to do about it. */
export function listeningWarningWords(warning: ListeningWarning): string {
  const { stretch } = warning;
  const said = findingWords(warning);
  return stretch === undefined
    ? said
    : `Between ${fixed(stretch.fromS, 0)} and ${fixed(stretch.toS, 0)} s: ${said}`;
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

/** How to slide: a hand's width, some 8 cm, in four seconds is 2 cm/s. */
export const SLOWER = 'Slide more slowly: a hand’s width in four seconds.';

function findingWords(warning: ListeningWarning): string {
  switch (warning.code) {
    case 'no-fork-heard': {
      const { nominalHz, toleranceHz, otherHz } = warning;
      const nothing = `No steady tone within ${fixed(toleranceHz, 1)} Hz of ${hertz(nominalHz)} Hz was heard`;
      return otherHz === null
        ? `${nothing}: check the fork's stamp, strike harder or hold the fork nearer to the microphone.`
        : `${nothing}, but one at about ${fixed(otherHz, 0)} Hz: check the fork's stamp and what the bench is set to. If it is the right fork, it is far off its stamp: weighted, nicked or loose.`;
    }
    case 'off-stamp': {
      const { measuredHz, offsetHz } = warning;
      return `The fork sounds at ${fixed(measuredHz, 2)} Hz, ${fixed(Math.abs(offsetHz), 2)} Hz ${side(offsetHz)} its stamp: use the measured pitch, and check the fork for nicks.`;
    }
    case 'beating': {
      const beat = fixed(Math.abs(warning.offsetHz), 2);
      return `Another fork of nearly the same pitch sounds, ${beat} Hz ${side(warning.offsetHz)} yours: the level beats ${beat} times a second. Have it damped, or wait until it has died away.`;
    }
    case 'fork-turned':
      return `The tone went silent and came back reversed ${times(warning.turns)} from ${fixed(warning.timeS, 1)} s on, as when a fork is turned about its stem: keep one prong facing the mouth.`;
    case 'slide-too-fast':
      return warning.timeS === null
        ? `The resonances passed within ${fixed(warning.halfPowerS, 2)} s: too fast for the column to ring up fully. ${SLOWER}`
        : `At ${fixed(warning.timeS, 1)} s a resonance went by too fast for the column to ring up: it may not have been marked. ${SLOWER}`;
    case 'clipping': {
      const often = times(warning.times);
      return warning.limit === null
        ? `The input was too loud ${often}: move the microphone away or turn its gain down.`
        : `The crests were cut off at ${fixed(100 * warning.limit, 0)} % of full scale ${often}: what stands before the recorder is overdriven. Move the microphone away or turn its gain down.`;
    }
    case 'too-faint':
      return `The loudest moment reaches only ${fixed(100 * warning.largest, 2)} % of full scale: raise the microphone’s gain or move it nearer to the mouth of the column.`;
    case 'gain-pumping':
      return 'The room grows quieter whenever the fork is loud: an automatic gain rides on the sound, and levels can’t be compared. Turn off automatic gain, noise suppression and echo cancelling of the microphone.';
    case 'too-short':
      return 'The recording is shorter than a second: too short to find a fork in it. Record a whole slide.';
    case 'silent':
      return 'The sound is pure silence: the microphone is muted, or it is another one than meant.';
    case 'gap':
      return `Sound was lost ${times(warning.losses)}, first at ${fixed(warning.timeS, 1)} s: nothing is flagged across it. Close other programs and slide there again.`;
    case 'dropouts': {
      const where = warning.timeS === null ? '' : `, first at ${fixed(warning.timeS, 1)} s`;
      return `The sound broke off and came back ${times(warning.times)}${where}: levels there are too low. Close other programs, or use a microphone with a cable.`;
    }
    case 'narrow-band':
      return `There is nothing above ${kilohertz(warning.edgeHz)} kHz: so sounds talk far from the microphone, a headset in its telephone mode, or a telephone’s own recording. The fork’s pitch is below it and is heard. If levels look odd, do the gain check or choose the device’s own microphone.`;
    case 'high-band-missing':
      return 'There is nothing above 16 kHz: so sounds a quiet room, a suppression of noise or a strong compression of the file. The fork’s pitch is below it and is heard. If levels look odd, do the gain check; record as WAV where you can.';
    case 'floor-fell':
      return `The quiet between sounds fell ${fixed(warning.fallDb, 0)} dB below what the room was at first: either the room became quiet, or a suppression of noise has set in. Of a microphone do the gain check before you trust a level.`;
    case 'offset':
      return `The sound lies ${fixed(100 * Math.abs(warning.offset), 1)} % of full scale beside zero: a fault of the sound card or its plug. Levels at the fork’s pitch stand; try another input if the sound clips.`;
    case 'hum':
      return `The mains hum at ${hertz(warning.mainsHz)} Hz is loud (${plainFixed(warning.levelDb, 0)} dB): unplug the charger, or move away from power supplies and lamps.`;
    case 'cut-off':
      return 'The end of this file is missing: it was cut off. What is there is used.';
    case 'one-channel':
      return channelWords(warning.reason);
  }
}

/** A rate at which every fork of the bench is heard, and which every device offers, Hz. */
const USUAL_RATE = '44 100 or 48 000';

/** Why a pitch can’t be heard at a sample rate, and what to do. */
export function unheardPitchWords(fault: UnheardPitch): FaultWords {
  const { sampleRateHz, lowestHz, highestHz } = fault;
  if (fault.unheard === 'sample-rate') {
    return {
      what: `This sound has a sample rate of ${sampleRateHz} Hz; the bench hears ${lowestHz} to ${highestHz} Hz.`,
      advice: `Record at ${USUAL_RATE} Hz.`,
    };
  }
  return {
    what: `A pitch of ${hertz(fault.pitchHz)} Hz can’t be heard at this sound’s sample rate of ${sampleRateHz} Hz: ${lowestHz} to ${Math.floor(highestHz)} Hz can.`,
    advice: `Record at ${USUAL_RATE} Hz (a headset’s microphone often gives less), or choose another pitch. Lengths can be typed all the same.`,
  };
}
