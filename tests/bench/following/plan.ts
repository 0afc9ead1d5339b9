import type { Random } from '../detector/random.ts';
import { HandPath } from './hand.ts';
import { columnOf } from './scene.ts';
import type { Scene } from './scene.ts';

/** From one strike to its damping. */
export interface Strike {
  readonly startS: number;
  readonly endS: number;
  /** Against the first one's. */
  readonly level: number;
  readonly phaseRad: number;
}

/** What the hands do, and when. */
export interface Plan {
  /** HAND_RATE_HZ values a second. */
  readonly lengthM: readonly number[];
  readonly strikes: readonly Strike[];
  readonly durationS: number;
}

/** One pass, then a hand that wanders about the resonance; the fork struck once more half-way where the scene says so. */
export function drawPlan(random: Random, scene: Scene): Plan {
  const { resonantLengthM: centre, halfWidthM: h } = columnOf(scene);
  const direction = random.sign();
  // A short column can't start far below its resonance.
  const before = Math.min(random.uniform(0.018, 0.04) + 4 * h, direction > 0 ? centre - 0.03 : 1);
  const path = new HandPath(random.branch('path'), centre - direction * before);
  const firstS = random.uniform(1, 1.6);
  path.hold(firstS + random.uniform(0.7, 1.5));
  path.slideTo(centre + direction * random.uniform(2, 5) * h, scene.hand.passMps);
  path.hold(random.uniform(0.2, 0.8));
  const turnsS = random.uniform(6, 9);
  wander(random.branch('wander'), path, scene, centre, h, turnsS);
  const strikes: Strike[] = [{ startS: firstS, endS: path.timeS, level: 1, phaseRad: random.uniform(-3, 3) }];
  if (scene.isStruckAgain) {
    const pauseS = random.uniform(0.2, 1.5);
    path.moveTo(path.positionM + random.uniform(-1, 1) * 0.5 * h, pauseS);
    const startS = path.timeS;
    path.hold(random.uniform(0.3, 0.8));
    wander(random.branch('wander again'), path, scene, centre, h, random.uniform(5, 7));
    strikes.push({
      startS,
      endS: path.timeS,
      level: Math.exp(0.4 * random.gauss()),
      phaseRad: random.uniform(-3, 3),
    });
  }
  path.hold(1.2);
  return { lengthM: path.lengthsM, strikes, durationS: path.timeS };
}

function wander(
  random: Random,
  path: HandPath,
  scene: Scene,
  centre: number,
  h: number,
  seconds: number,
): void {
  const untilS = path.timeS + seconds;
  const { motion } = scene.hand;
  if (motion === 'swings') path.swing(centre, random.uniform(1.2, 2) * h, seconds);
  if (motion === 'walks') path.walk(centre, random.uniform(0.9, 1.6) * h, seconds);
  while (path.timeS < untilS) {
    // Approaches, overshoots, crossings, slow returns and pauses.
    const isWide = random.chance(0.15);
    const target = centre + h * (isWide ? random.sign() * random.uniform(2, 4) : random.uniform(-2, 2));
    const distance = Math.abs(target - path.positionM) / h;
    path.moveTo(target, Math.max(0.4, distance * random.uniform(0.25, 1.1)));
    path.hold(random.uniform(0.1, 1.2));
  }
}
