import { parseArgs } from 'node:util';
import { guessesOf } from '../../../src/resonance/following/columnGuess.ts';
import { FollowingAnalysis } from '../../../src/session/recording/followingAnalysis.ts';
import { defaultToleranceHz } from '../../../src/session/hearing/forkTolerance.ts';
import { HAND_RATE_HZ } from './hand.ts';
import { drawRecording, SAMPLE_RATE_HZ } from './recording.ts';
import type { Recording } from './recording.ts';
import { ROOMS } from './scene.ts';
import type { Room, World } from './scene.ts';

/** Nearer than this the side doesn't matter, half widths. */
const HERE = 0.35;

const { values } = parseArgs({
  options: {
    count: { type: 'string', default: '8' },
    first: { type: 'string', default: '1' },
    again: { type: 'boolean', default: false },
    list: { type: 'boolean', default: false },
  },
});

interface Score {
  readonly beyond: number;
  readonly named: number;
  readonly right: number;
  readonly errorsMm: readonly number[];
  readonly errorsHalfWidths: readonly number[];
  readonly scale: number;
  readonly centreMs: number | null;
  readonly isFlagged: boolean;
}

function score({ samples, scene, plan, truth }: Recording): Score {
  const fork = { nominalHz: scene.nominalHz, toleranceHz: defaultToleranceHz(scene.nominalHz) };
  const tube = {
    frequencyHz: scene.nominalHz,
    ends: scene.closed ? ('closed' as const) : ('open' as const),
    diameterM: scene.diameterM,
  };
  const analysis = new FollowingAnalysis({ sampleRateHz: SAMPLE_RATE_HZ, fork, guesses: guessesOf(tube) });
  for (let at = 0; at < samples.length; at += 4096) analysis.push(samples.subarray(at, at + 4096));
  const { places, centres } = analysis.finish();
  const sounding = (timeS: number) =>
    plan.strikes.some(({ startS, endS }) => timeS > startS + 0.4 && timeS < endS - 0.1);
  let [beyond, named, right] = [0, 0, 0];
  const errorsMm: number[] = [];
  const errorsHalfWidths: number[] = [];
  const scales: number[] = [];
  for (const { timeS, halfWidths, distanceM } of places) {
    if (!sounding(timeS)) continue;
    const offM = truth.offM[Math.min(truth.offM.length - 1, Math.round(timeS * HAND_RATE_HZ))];
    const off = offM / truth.halfWidthM;
    if (Math.abs(off) > HERE) {
      beyond += 1;
      if (halfWidths !== null) {
        named += 1;
        if (halfWidths > 0 === off > 0) right += 1;
      }
    }
    if (halfWidths !== null) errorsHalfWidths.push(Math.abs(halfWidths - off));
    if (halfWidths !== null && distanceM !== null) scales.push(distanceM / halfWidths / truth.halfWidthM);
    if (distanceM !== null) errorsMm.push(1000 * Math.abs(distanceM - offM));
  }
  const own = centres.find(({ timeS }) => Math.abs(timeS - truth.centreS) < 0.5);
  return {
    beyond,
    named,
    right,
    errorsMm,
    errorsHalfWidths,
    scale: median(scales),
    centreMs: own === undefined ? null : 1000 * (own.timeS - truth.centreS),
    isFlagged: places.length > 0,
  };
}

function median(list: readonly number[]): number {
  return [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)] ?? NaN;
}

const began = performance.now();
for (const world of ['one pole', 'line'] as World[]) {
  for (const room of ROOMS as Room[]) {
    const scores: Score[] = [];
    for (let i = 0; i < Number(values.count); i += 1) {
      const seed = Number(values.first) + i;
      const recording = drawRecording({ world, room, isStruckAgain: values.again, seed });
      const one = score(recording);
      scores.push(one);
      if (values.list) {
        const { scene } = recording;
        console.log(
          `  ${seed} ${scene.nominalHz} ${scene.closed ? 'closed' : 'open'} ${scene.order} d ${(1000 * scene.diameterM).toFixed(0)} rise ${scene.riseDb.toFixed(0)} θ ${scene.angleRad.toFixed(1)} named ${one.named}/${one.beyond} right ${one.right} error ${median(one.errorsMm).toFixed(2)} mm ${median(one.errorsHalfWidths).toFixed(2)} h (${(1000*recording.truth.halfWidthM).toFixed(1)} mm, scale ${one.scale.toFixed(2)}) centre ${one.centreMs?.toFixed(0) ?? '–'} ms`,
        );
      }
    }
    const sum = (pick: (one: Score) => number) => scores.reduce((total, one) => total + pick(one), 0);
    const named = sum((one) => one.named);
    const beyond = sum((one) => one.beyond);
    const right = sum((one) => one.right);
    const all = scores.flatMap((one) => one.errorsMm);
    const good = scores.filter(
      (one) =>
        one.isFlagged &&
        one.named >= 0.7 * one.beyond &&
        one.right >= 0.98 * one.named &&
        median(one.errorsMm) <= 0.6,
    ).length;
    const scaled = scores.filter((one) => Math.abs(Math.log(one.scale)) < 0.15).length;
    const centres = scores.flatMap(({ centreMs }) => (centreMs === null ? [] : [Math.abs(centreMs)]));
    console.log(
      `${world}, ${room}: flagged ${sum((one) => Number(one.isFlagged))}/${scores.length}, named ${((100 * named) / beyond).toFixed(1)} %, right ${((100 * right) / named).toFixed(1)} %, error ${median(all).toFixed(2)} mm, per recording ${median(scores.map((one) => median(one.errorsMm))).toFixed(2)} mm, in half widths ${median(scores.map((one) => median(one.errorsHalfWidths))).toFixed(2)}, width right ${scaled}, all bars ${good}/${scores.length}, centre ${median(centres).toFixed(0)} ms`,
    );
  }
}
console.log(`${((performance.now() - began) / 1000).toFixed(0)} s`);
