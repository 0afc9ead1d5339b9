import { ColumnAtPitch } from '../detector/column.ts';
import type { Random } from '../detector/random.ts';

/** How the tone is made: a resonator of one pole, or a wave that runs to and fro in a tube (in a room that echoes). */
export type World = 'one pole' | 'line';
/** Talk against the fork's direct sound while the first resonance is passed; rms against rms. */
export type Room = 'quiet' | 'talk -10 dB' | 'talk 0 dB';

export const ROOMS: readonly Room[] = ['quiet', 'talk -10 dB', 'talk 0 dB'];
const FORKS_HZ = [256, 288, 320, 341.3, 384, 426.6, 480, 512];

/** One setup: fork, tube, microphone, and who holds them. Drawn, never fitted. */
export interface Scene {
  readonly world: World;
  readonly room: Room;
  readonly nominalHz: number;
  readonly forkHz: number;
  readonly closed: boolean;
  readonly order: number;
  readonly diameterM: number;
  readonly temperatureC: number;
  /** How far the tube loses more than theory says, >= 1. */
  readonly lossFactor: number;
  /** Loudest place of a slow pass over the direct sound, dB. */
  readonly riseDb: number;
  /** Angle of the column's part against the direct sound, rad. */
  readonly angleRad: number;
  /** Time in which the fork's amplitude falls to 1/e, s. */
  readonly decayS: number;
  readonly hand: HandMakeup;
  readonly isStruckAgain: boolean;
}

/** How unsteady a hand is, and how it moves. */
export interface HandMakeup {
  readonly levelDb: number;
  readonly phaseRad: number;
  /** Time over which it keeps itself in mind, s. */
  readonly memoryS: number;
  /** Slow drift over ten seconds, standard. */
  readonly driftDb: number;
  readonly driftRad: number;
  /** Of the direct sound alone, as a part of the whole's: two paths to the microphone aren't quite alike. */
  readonly apartShare: number;
  readonly motion: 'moves' | 'swings' | 'walks';
  readonly passMps: number;
}

/** @param world  decides how the hand moves, too: each world has ways of its own */
export function drawScene(random: Random, world: World, room: Room, isStruckAgain = false): Scene {
  const nominalHz = random.pick(FORKS_HZ);
  const isLine = world === 'line';
  return {
    world,
    room,
    nominalHz,
    forkHz: nominalHz + random.uniform(-0.5, 0.5),
    closed: random.chance(0.6),
    order: random.integer(1, 2),
    diameterM: random.uniform(0.025, 0.044),
    temperatureC: random.uniform(16, 26),
    lossFactor: isLine ? random.uniform(1, 1.15) : 1,
    riseDb: random.uniform(9, 18),
    angleRad: random.uniform(-Math.PI, Math.PI),
    decayS: Math.exp(random.uniform(Math.log(5), Math.log(40))),
    hand: {
      levelDb: random.uniform(0.3, 1.1),
      phaseRad: random.uniform(0.04, 0.12),
      memoryS: random.uniform(0.3, 1),
      driftDb: random.uniform(0, 1),
      driftRad: random.uniform(0, 0.15),
      apartShare: isLine ? random.uniform(0, 0.4) : 0,
      motion: isLine ? 'walks' : random.chance(0.6) ? 'moves' : 'swings',
      passMps: random.uniform(0.01, 0.04),
    },
    isStruckAgain,
  };
}

/** What the tube of a scene does: where it resonates and how wide. */
export interface SceneColumn {
  readonly column: ColumnAtPitch;
  readonly resonantLengthM: number;
  /** Half of the width in length at half power, m. */
  readonly halfWidthM: number;
  /** Time constant of ringing up, 2Q/ω with Q the sounding length over the full width, s. */
  readonly ringUpS: number;
}

export function columnOf(scene: Scene): SceneColumn {
  const { closed, diameterM, lossFactor, temperatureC, forkHz, order } = scene;
  const tube = { radiusM: diameterM / 2, closed, lossFactor, endFactor: 1, temperatureC };
  const column = new ColumnAtPitch(tube, forkHz);
  const resonantLengthM = column.resonantLengthM(order);
  const halfWidthM = column.halfWidthM(order);
  const soundingM = resonantLengthM + (closed ? 1 : 2) * column.endCorrectionM;
  const ringUpS = soundingM / halfWidthM / (2 * Math.PI * forkHz);
  return { column, resonantLengthM, halfWidthM, ringUpS };
}

/**
 * Size m of the column's part at resonance so that the loudest place of a slow pass stands so many dB over the direct
 * sound: |1 + m e^{iθ} / (1 + ix)| at its highest over x.
 */
export function columnShare(riseDb: number, angleRad: number): number {
  const wanted = 10 ** (riseDb / 20);
  let low = 0;
  let high = 40;
  for (let round = 0; round < 50; round += 1) {
    const m = (low + high) / 2;
    if (loudest(m, angleRad) < wanted) low = m;
    else high = m;
  }
  return (low + high) / 2;
}

function loudest(m: number, angleRad: number): number {
  let most = 0;
  for (let x = -3; x <= 3; x += 0.02) most = Math.max(most, Math.hypot(...staticTone(m, angleRad, x)));
  return most;
}

/** 1 + m e^{iθ} / (1 + ix): [re, im]. */
export function staticTone(m: number, angleRad: number, x: number): [number, number] {
  const power = 1 + x * x;
  const re = (m * (Math.cos(angleRad) + x * Math.sin(angleRad))) / power;
  const im = (m * (Math.sin(angleRad) - x * Math.cos(angleRad))) / power;
  return [1 + re, im];
}
