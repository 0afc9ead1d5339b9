import { parseArgs } from 'node:util';
import { analyseRecording } from '../../../src/session/recording/analyseRecording.ts';
import { defaultToleranceHz } from '../../../src/session/hearing/forkTolerance.ts';
import { HAND_RATE_HZ } from './hand.ts';
import { drawRecording, SAMPLE_RATE_HZ } from './recording.ts';
import type { Recording } from './recording.ts';
import { ROOMS } from './scene.ts';
import type { Room, World } from './scene.ts';

/*
 * How well a column is followed after one pass, against the truth of two simulated worlds.
 * usage: npm run bench:following -- [--count 8] [--first 1] [--again] [--list]
 *   --count  recordings of each world and room    --again  the fork is struck once more half-way
 *   --first  seed of the first                    --list   a line a recording
 */

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
  /** Of each resonance found, against the nearest moment in which the length was right. */
  readonly lateMs: { readonly level: readonly number[]; readonly centre: readonly number[] };
  readonly isFlagged: boolean;
}

function score({ samples, scene, plan, truth }: Recording): Score {
  const fork = { nominalHz: scene.nominalHz, toleranceHz: defaultToleranceHz(scene.nominalHz) };
  const tube = { ends: scene.closed ? ('closed' as const) : ('open' as const), diameterM: scene.diameterM };
  const report = analyseRecording(samples, { sampleRateHz: SAMPLE_RATE_HZ, fork, follow: { tube } });
  const places = report.following ?? [];
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
  const crossings = crossingsOf(truth.offM, sounding);
  const lateMs = { level: [] as number[], centre: [] as number[] };
  for (const { timeS, centreS } of report.resonances) {
    const own = nearest(crossings, timeS);
    if (Math.abs(own - timeS) > 0.5) continue;
    lateMs.level.push(1000 * (timeS - own));
    if (centreS !== null) lateMs.centre.push(1000 * (centreS - own));
  }
  return {
    beyond,
    named,
    right,
    errorsMm,
    errorsHalfWidths,
    scale: median(scales),
    lateMs,
    isFlagged: places.length > 0,
  };
}

function median(list: readonly number[]): number {
  return [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)] ?? NaN;
}

/** Moments in which the length passes resonance while the fork sounds, s. */
function crossingsOf(offM: Float64Array, isSounding: (timeS: number) => boolean): number[] {
  const found: number[] = [];
  for (let i = 1; i < offM.length; i += 1) {
    if (offM[i - 1] * offM[i] <= 0 && isSounding(i / HAND_RATE_HZ)) found.push(i / HAND_RATE_HZ);
  }
  return found;
}

const nearest = (timesS: readonly number[], timeS: number): number =>
  timesS.reduce((best, one) => (Math.abs(one - timeS) < Math.abs(best - timeS) ? one : best), Infinity);

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
          `  ${seed} ${scene.nominalHz} ${scene.closed ? 'closed' : 'open'} ${scene.order} d ${(1000 * scene.diameterM).toFixed(0)} rise ${scene.riseDb.toFixed(0)} θ ${scene.angleRad.toFixed(1)} named ${one.named}/${one.beyond} right ${one.right} error ${median(one.errorsMm).toFixed(2)} mm ${median(one.errorsHalfWidths).toFixed(2)} h (${(1000 * recording.truth.halfWidthM).toFixed(1)} mm, scale ${one.scale.toFixed(2)}) centres ${one.lateMs.centre.map((late) => late.toFixed(0)).join(' ')} ms`,
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
    const centres = scores.flatMap(({ lateMs }) => lateMs.centre.map(Math.abs));
    const levels = scores.flatMap(({ lateMs }) => lateMs.level.map(Math.abs));
    console.log(
      `${world}, ${room}: flagged ${sum((one) => Number(one.isFlagged))}/${scores.length}, named ${((100 * named) / beyond).toFixed(1)} %, right ${((100 * right) / named).toFixed(1)} %, error ${median(all).toFixed(2)} mm, per recording ${median(scores.map((one) => median(one.errorsMm))).toFixed(2)} mm, in half widths ${median(scores.map((one) => median(one.errorsHalfWidths))).toFixed(2)}, width right ${scaled}, named in 70 %, right in 98 % and within 0.6 mm ${good}/${scores.length}, centre off by ${median(centres).toFixed(0)} ms in ${centres.length}, level by ${median(levels).toFixed(0)} ms in ${levels.length}`,
    );
  }
}
console.log(`${((performance.now() - began) / 1000).toFixed(0)} s`);
