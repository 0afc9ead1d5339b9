import { ColumnAtPitch } from './column.ts';
import { lockIn } from './lockIn.ts';
import { hum, knocks, mix, pinkNoise, scrape } from './noises.ts';
import { addStrikeSounds, addTone, perform, type ForkTruth, type Performance } from './performance.ts';
import { drawFork, HIGHEST_FORKS_HZ, LOWEST_FORKS_HZ, planPerformance } from './plan.ts';
import { Random } from './random.ts';
import { reverberate, reverberateTone } from './reverberation.ts';
import type { Condition, Scenario } from './scenario.ts';
import { talk } from './talk.ts';
import { findPassages, type Passage } from './truth.ts';
import { GENERATED_VOICES, type VoiceKind, type Voices } from './voices/voices.ts';

export interface Truth {
  readonly condition: Condition;
  readonly seed: number;
  readonly durationS: number;
  /** The stamp of the fork to listen for, given even where no fork sounds. */
  readonly nominalHz: number;
  /** null: no fork sounds in this recording. */
  readonly fork: ForkTruth | null;
  readonly soundings: readonly { readonly startS: number; readonly endS: number }[];
  readonly passages: readonly Passage[];
  readonly checkVerdict: 'resonant' | 'not-resonant' | null;
  /** Level with the fork at the mouth over the direct sound there, the column as it stands; null in slides. */
  readonly checkRiseDb: number | null;
  /** Visits of the fork to the mouth, in a check. */
  readonly visits: number;
  /** Where even a person may be wrong: another fork of the same stamp, or a check off resonance that still rises. */
  readonly hard: boolean;
  /** Whose talk is heard; null: nobody talks. */
  readonly speech: VoiceKind | null;
  readonly closed: boolean | null;
  readonly radiusM: number | null;
  readonly riseDb: number | null;
}

export interface SimulatedRecording {
  readonly samples: Float32Array;
  readonly sampleRateHz: number;
  readonly truth: Truth;
}

const OTHER_FORKS_HZ = [256, 288, 320, 341.3, 384, 426.6, 480, 512, 1024];

/** Loudness of the room's parts, dB, rms, against the fork's direct sound right after a strike. */
interface Mixture {
  roomDb: number;
  talkDb: number | null;
  humDb: number | null;
  scrapeDb: number;
  knocksPerSecond: number;
  neighbours: number;
  samePitch: boolean;
}

/**
 * Makes one recording, mono, with what truly happened in it. The same scenario, seed and voices give the same samples.
 */
export function simulate(
  scenario: Scenario,
  seed: number,
  voices: Voices = GENERATED_VOICES,
): SimulatedRecording {
  const { condition } = scenario;
  const clean = scenario.clean ?? false;
  const random = new Random(seed).branch(condition);
  const sampleRateHz = scenario.sampleRateHz ?? (random.chance(0.15) ? 44100 : 48000);
  const isCheck = condition.startsWith('check-');
  const durationS = scenario.durationS ?? random.uniform(isCheck ? 14 : 18, isCheck ? 24 : 36);
  const controlHz = sampleRateHz / 6;
  const length = Math.floor(durationS * sampleRateHz);
  const nominalHz = scenario.nominalHz ?? nominalOf(random.branch('stamp'), condition);
  const fork = drawFork(random.branch('fork'), nominalHz);
  const own = planPerformance(random.branch('own'), condition, fork, durationS, controlHz, clean);
  const heard = condition !== 'talk-alone';
  const tone = perform(random.branch('perform'), own, controlHz);
  const echoS = random.uniform(0.3, 0.6);
  const envelope = clean
    ? tone.envelope
    : reverberateTone(random.branch('echo'), tone.envelope, echoS, drawDirectDb(random, condition));

  const room = new Float32Array(length);
  const mixture = drawMixture(random.branch('mixture'), condition);
  const reference = own.amplitude / Math.SQRT2;
  if (!clean) {
    const branch = random.branch('room');
    addRoom(branch, room, sampleRateHz, mixture, reference, echoS, own, controlHz, voices);
    for (let i = 0; i < mixture.neighbours; i += 1) {
      addNeighbour(
        random.branch(`neighbour ${i}`),
        room,
        sampleRateHz,
        controlHz,
        durationS,
        own,
        mixture.samePitch,
      );
    }
  }

  const samples = new Float32Array(length);
  if (heard) {
    addTone(samples, sampleRateHz, envelope, fork.actualHz, random.uniform(0, 2 * Math.PI));
    if (!clean) addStrikeSounds(random.branch('strikes'), samples, sampleRateHz, own);
  }
  mix(samples, room, 1);
  const gain = clean ? 1 : inputGain(random.branch('gain'), condition, own.amplitude, samples);
  for (let i = 0; i < length; i += 1) samples[i] *= gain;
  if (!clean) throughMicrophone(random.branch('microphone'), samples, sampleRateHz, condition);

  const column = own.tube === null ? null : new ColumnAtPitch(own.tube, fork.actualHz);
  const passages =
    heard && column !== null
      ? findPassages(column, tone, own.lengthM, noiseAround(room, sampleRateHz, fork.actualHz, gain))
      : [];
  return {
    samples,
    sampleRateHz,
    truth: {
      condition,
      seed,
      durationS,
      nominalHz: fork.nominalHz,
      fork: heard ? fork : null,
      soundings: heard
        ? own.strikes.map((strike, i) => ({
            startS: strike.strikeS,
            endS: strike.dampedS ?? own.strikes[i + 1]?.strikeS ?? durationS,
          }))
        : [],
      passages,
      checkVerdict:
        condition === 'check-resonant' ? 'resonant' : condition === 'check-off' ? 'not-resonant' : null,
      checkRiseDb: isCheck ? (tone.columnGainDb.at(-1) ?? null) : null,
      visits: own.strikes.reduce((sum, strike) => sum + strike.visits.length, 0),
      hard: condition === 'same-pitch' || (condition === 'check-off' && (tone.columnGainDb.at(-1) ?? 0) > 3),
      speech: mixture.talkDb === null ? null : voices.kind,
      closed: own.tube?.closed ?? null,
      radiusM: own.tube?.radiusM ?? null,
      riseDb: own.tube === null ? null : own.riseDb,
    },
  };
}

/** The stamp that a condition asks for; undefined: any of the set. */
function nominalOf(random: Random, condition: Condition): number | undefined {
  if (condition === 'lowest-forks') return random.pick(LOWEST_FORKS_HZ);
  if (condition === 'highest-forks') return random.pick(HIGHEST_FORKS_HZ);
  const isOuter = condition === 'clamped-fork' && random.chance(0.5);
  return isOuter ? random.pick([...LOWEST_FORKS_HZ, ...HIGHEST_FORKS_HZ]) : undefined;
}

/** How much louder the direct sound is than the echo, dB: a clamped fork's microphone is clamped, too, and near. */
const drawDirectDb = (random: Random, condition: Condition): number =>
  condition === 'clamped-fork' ? random.uniform(12, 40) : random.uniform(8, 16);

function drawMixture(random: Random, condition: Condition): Mixture {
  const mixture: Mixture = {
    roomDb: random.uniform(-25, -12),
    talkDb: random.chance(0.5) ? random.uniform(-20, -8) : null,
    humDb: random.chance(0.3) ? random.uniform(-35, -15) : null,
    scrapeDb: random.uniform(-30, -15),
    knocksPerSecond: random.chance(0.4) ? 0.1 : 0,
    neighbours: 0,
    samePitch: false,
  };
  switch (condition) {
    case 'quiet':
    case 'clipped':
      return { ...mixture, talkDb: null };
    case 'clamped-fork':
      return {
        ...mixture,
        roomDb: random.uniform(-70, -30),
        talkDb: null,
        humDb: null,
        scrapeDb: random.uniform(-70, -35),
        knocksPerSecond: 0,
      };
    case 'talk-0':
      return { ...mixture, talkDb: 0 };
    case 'talk-6':
      return { ...mixture, talkDb: 6 };
    case 'talk-15':
      return { ...mixture, talkDb: 15 };
    case 'talk-alone':
      return { ...mixture, talkDb: random.uniform(0, 15), knocksPerSecond: random.chance(0.5) ? 0.4 : 0 };
    case 'neighbours':
      return { ...mixture, talkDb: random.uniform(-10, 6), neighbours: random.integer(1, 3) };
    case 'same-pitch':
      return { ...mixture, talkDb: random.uniform(-10, 3), neighbours: 1, samePitch: true };
    case 'scrape':
      return { ...mixture, scrapeDb: random.uniform(-8, 6), knocksPerSecond: 0.2 };
    case 'hum':
      return { ...mixture, humDb: random.uniform(-6, 10) };
    case 'knocks':
      return { ...mixture, knocksPerSecond: random.uniform(0.3, 1.2) };
    case 'no-resonance':
    case 'no-column':
    case 'approach-on-resonance':
    case 'approach-off-resonance':
    case 'strike-only':
    case 'fast-slide':
    case 'slow-slide':
    case 'pause-and-return':
    case 'open-column':
    case 'turning':
    case 'single-pass':
    case 'lowest-forks':
    case 'highest-forks':
      return { ...mixture, talkDb: random.uniform(-15, 6) };
    case 'check-resonant':
    case 'check-off':
      return { ...mixture, talkDb: random.chance(0.3) ? null : random.uniform(-12, 6), scrapeDb: -60 };
    case 'faint':
    case 'gain-pumping':
      return mixture;
  }
}

function addRoom(
  random: Random,
  room: Float32Array,
  sampleRateHz: number,
  mixture: Mixture,
  reference: number,
  echoS: number,
  own: Performance,
  controlHz: number,
  voices: Voices,
): void {
  const length = room.length;
  const gain = (levelDb: number): number => reference * 10 ** (levelDb / 20);
  if (mixture.talkDb !== null) {
    const dry = talk(random.branch('talk'), length, sampleRateHz, random.integer(1, 4), voices);
    const wet = reverberate(random.branch('hall'), dry, sampleRateHz, echoS, random.uniform(-3, 5));
    let power = 0;
    for (let i = 0; i < length; i += 1) power += wet[i] * wet[i];
    mix(room, wet, gain(mixture.talkDb) / Math.sqrt(power / length));
  }
  mix(room, pinkNoise(random.branch('pink'), length, sampleRateHz), gain(mixture.roomDb));
  if (mixture.humDb !== null) mix(room, hum(random.branch('hum'), length, sampleRateHz), gain(mixture.humDb));
  mix(
    room,
    scrape(random.branch('scrape'), own.lengthM, controlHz, length, sampleRateHz),
    gain(mixture.scrapeDb),
  );
  if (mixture.knocksPerSecond > 0) {
    mix(
      room,
      knocks(random.branch('knocks'), length, sampleRateHz, mixture.knocksPerSecond),
      gain(random.uniform(12, 24)),
    );
  }
}

/** Another group: a fork of its own, often with a column that slides through resonance. */
function addNeighbour(
  random: Random,
  room: Float32Array,
  sampleRateHz: number,
  controlHz: number,
  durationS: number,
  own: Performance,
  samePitch: boolean,
): void {
  const others = OTHER_FORKS_HZ.filter((pitch) => Math.abs(pitch - own.fork.nominalHz) > 5);
  const drawn = drawFork(random.branch('fork'), samePitch ? own.fork.nominalHz : random.pick(others));
  const fork = samePitch
    ? { ...drawn, actualHz: own.fork.actualHz + random.sign() * random.uniform(0.2, 1.5) }
    : drawn;
  // Of the same pitch: mostly a fork that only sounds; sometimes its own column, which nobody could tell apart.
  const condition = samePitch && random.chance(0.7) ? 'strike-only' : 'quiet';
  const plan = planPerformance(random.branch('plan'), condition, fork, durationS, controlHz, false);
  const level = own.amplitude * 10 ** (random.uniform(samePitch ? -20 : -12, samePitch ? -6 : 3) / 20);
  const played = { ...plan, amplitude: level };
  const tone = perform(random.branch('perform'), played, controlHz);
  const far = reverberateTone(random.branch('echo'), tone.envelope, 0.45, random.uniform(-2, 8));
  addTone(room, sampleRateHz, far, fork.actualHz, random.uniform(0, 2 * Math.PI));
  addStrikeSounds(random.branch('strikes'), room, sampleRateHz, played);
}

/** Gain that the page's user has set: as a rule nothing clips. */
function inputGain(random: Random, condition: Condition, amplitude: number, samples: Float32Array): number {
  if (condition === 'faint') return 10 ** (random.uniform(-92, -72) / 20) / amplitude;
  if (condition === 'clipped') return 10 ** (random.uniform(-20, -5) / 20) / amplitude;
  let peak = 0;
  for (let i = 0; i < samples.length; i += 1) peak = Math.max(peak, Math.abs(samples[i]));
  return peak > 0.9 ? 0.9 / peak : 1;
}

/** Own noise of the input, gain pumping where wanted, clipping, 16 bits. */
function throughMicrophone(
  random: Random,
  samples: Float32Array,
  sampleRateHz: number,
  condition: Condition,
): void {
  const noise = 10 ** (random.uniform(-92, -78) / 20);
  const attack = 1 - Math.exp(-1 / (0.03 * sampleRateHz));
  const release = 1 - Math.exp(-1 / (0.8 * sampleRateHz));
  let mean = 0;
  const target = condition === 'gain-pumping' ? 0.1 : 0;
  for (let i = 0; i < samples.length; i += 1) {
    let value = samples[i] + noise * (random.next() - 0.5) * 3.46;
    if (target > 0) {
      const size = Math.abs(value);
      mean += (size > mean ? attack : release) * (size - mean);
      value *= target / Math.max(mean, 0.004);
    }
    samples[i] = Math.max(-32768, Math.min(32767, Math.round(value * 32768))) / 32768;
  }
}

/** Mean power of all that isn't the own fork in 10 Hz at its pitch, within half a second of a time. */
export function noiseAround(
  room: Float32Array,
  sampleRateHz: number,
  frequencyHz: number,
  gain: number,
): (timeS: number) => number {
  const band = lockIn(room, sampleRateHz, frequencyHz, 10, 100);
  const floor = (10 ** (-80 / 20) / gain) ** 2 * (20 / sampleRateHz);
  return (timeS) => {
    const first = Math.max(0, Math.round((timeS - 0.5) * band.rateHz));
    const last = Math.min(band.re.length - 1, Math.round((timeS + 0.5) * band.rateHz));
    let sum = 0;
    for (let i = first; i <= last; i += 1) sum += band.re[i] ** 2 + band.im[i] ** 2;
    return sum / (2 * Math.max(1, last - first + 1)) + floor;
  };
}
