import { times } from './grammar.ts';

/** What a listener should know of the sound, with what to do about it. Numbers come as they are shown. */
export const listening = {
  /** What holds of a stretch of a recording only. */
  between: (fromS: string, toS: string, said: string) => `Between ${fromS} and ${toS} s: ${said}`,
  slower: 'Slide more slowly: a hand’s width in four seconds.',
  noFork: (toleranceHz: string, nominalHz: string) =>
    `No steady tone within ${toleranceHz} Hz of ${nominalHz} Hz was heard: check the frequency stamped on the fork, strike harder or hold the fork nearer to the microphone.`,
  otherFork: (toleranceHz: string, nominalHz: string, otherHz: string) =>
    `No steady tone within ${toleranceHz} Hz of ${nominalHz} Hz was heard, but one at about ${otherHz} Hz: check the frequency stamped on the fork and the one chosen on this page. If it is the right fork, it is far off its stamp: weighted, nicked or loose.`,
  offStamp: (measuredHz: string, offsetHz: string, isAbove: boolean) =>
    `The fork sounds at ${measuredHz} Hz, ${offsetHz} Hz ${isAbove ? 'above' : 'below'} its stamp: use the measured frequency, and check the fork for nicks.`,
  beating: (beatHz: string, isAbove: boolean) =>
    `Another fork of nearly the same frequency is sounding, ${beatHz} Hz ${isAbove ? 'above' : 'below'} yours: the level beats ${beatHz} times a second. Have it damped, or wait until it has died away.`,
  forkTurned: (turns: number, fromS: string) =>
    `The tone went silent and came back reversed ${times(turns)} from ${fromS} s on, as when a fork is turned about its stem: keep one prong facing the mouth.`,
  tooFast: (halfPowerS: string, slower: string) =>
    `The resonances went by within ${halfPowerS} s, too fast: the column had no time to build up its full loudness. ${slower}`,
  tooFastAt: (timeS: string, slower: string) =>
    `At ${timeS} s a resonance went by too fast: the column had no time to build up its full loudness, and it may not have been marked. ${slower}`,
  clipping: (count: number) =>
    `The input was too loud ${times(count)}: move the microphone away or turn its gain down.`,
  overdriven: (percent: string, count: number) =>
    `The sound was clipped at ${percent} % of full scale ${times(count)}, before it reached the recorder: move the microphone away or turn its gain down.`,
  tooFaint: (percent: string) =>
    `The loudest moment reaches only ${percent} % of full scale: raise the microphone’s gain or move it nearer to the mouth of the column.`,
  gainPumping:
    'The room grows quieter whenever the fork is loud: an automatic gain is changing the volume, so levels can’t be compared. Turn off automatic gain, noise suppression and echo cancellation of the microphone.',
  tooShort: 'The recording is shorter than a second: too short to find a fork in it. Record a whole slide.',
  silent: 'No sound at all is arriving: the microphone is muted, or the wrong one is chosen.',
  gap: (losses: number, timeS: string) =>
    `Sound was lost ${times(losses)}, first at ${timeS} s: no resonance is marked there. Close other programs and slide there again.`,
  dropouts: (count: number) =>
    `The sound broke off and came back ${times(count)}: levels there are too low. Close other programs, or use a microphone with a cable.`,
  dropoutsFrom: (count: number, timeS: string) =>
    `The sound broke off and came back ${times(count)}, first at ${timeS} s: levels there are too low. Close other programs, or use a microphone with a cable.`,
  narrowBand: (edgeKhz: string) =>
    `There is nothing above ${edgeKhz} kHz: typical of talk far from the microphone, of a headset in call mode or of a phone’s own recording. The fork’s frequency is below it and is heard. If levels look odd, do the gain check or choose the device’s own microphone.`,
  highBandMissing: (edgeKhz: string) =>
    `There is nothing above ${edgeKhz} kHz: typical of a quiet room, of noise suppression or of a strongly compressed file. The fork’s frequency is below it and is heard. If levels look odd, do the gain check; record as WAV where you can.`,
  floorFell: (fallDb: string) =>
    `The quiet between sounds fell ${fallDb} dB below the room noise at first: either the room became quiet, or noise suppression has set in. With a microphone, do the gain check before you trust a level.`,
  offset: (percent: string) =>
    `The sound has a DC offset of ${percent} % of full scale: a fault of the sound card or its plug. Levels at the fork’s frequency are right all the same; try another input if the sound clips.`,
  hum: (mainsHz: string, levelDb: string) =>
    `The mains hum at ${mainsHz} Hz is loud (${levelDb} dB): unplug the charger, or move away from power supplies and lamps.`,
  cutOff: 'The end of this file is missing: it was cut off. What is there is used.',
};

/** Why a frequency can't be heard in a sound, and what to do. */
export const unheardFrequency = {
  sampleRate: {
    what: (sampleRateHz: number, lowestHz: number, highestHz: number) =>
      `This sound has a sample rate of ${sampleRateHz} Hz; this page can use ${lowestHz} to ${highestHz} Hz.`,
    advice: (usualRates: string) => `Record at ${usualRates} Hz.`,
  },
  frequency: {
    what: (frequencyHz: string, sampleRateHz: number, lowestHz: number, highestHz: number) =>
      `A frequency of ${frequencyHz} Hz can’t be heard at this sound’s sample rate of ${sampleRateHz} Hz: ${lowestHz} to ${highestHz} Hz can.`,
    advice: (usualRates: string) =>
      `Record at ${usualRates} Hz (a headset’s microphone often gives less), or choose another frequency. You can still type lengths.`,
  },
};
