import { parseArgs } from 'node:util';
import { median as medianOf } from '../../../src/numeric/median.ts';
import { drawRecording } from './recording.ts';
import { analyse, score } from './score.ts';
import type { Score } from './score.ts';
import { ROOMS } from './scene.ts';
import type { Room, World } from './scene.ts';

/*
 * How well a column is followed after one pass, against the truth of two simulated worlds.
 * usage: npm run bench:following -- [--count 8] [--first 1] [--again] [--list]
 *   --count  recordings of each world and room    --again  the fork is struck once more half-way
 *   --first  seed of the first                    --list   a line a recording
 */

const { values } = parseArgs({
  options: {
    count: { type: 'string', default: '8' },
    first: { type: 'string', default: '1' },
    again: { type: 'boolean', default: false },
    list: { type: 'boolean', default: false },
  },
});

const median = (list: readonly number[]): number => (list.length === 0 ? NaN : medianOf(list));

const began = performance.now();
for (const world of ['one pole', 'line'] as World[]) {
  for (const room of ROOMS as Room[]) {
    const scores: Score[] = [];
    for (let i = 0; i < Number(values.count); i += 1) {
      const seed = Number(values.first) + i;
      const recording = drawRecording({ world, room, isStruckAgain: values.again, seed });
      const one = score(recording, analyse(recording));
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
