import { parseArgs } from 'node:util';
import { median } from '../../../src/numeric/median.ts';
import { ALLOWED_S, drawTrial, runTrial } from './closedLoopTrial.ts';
import type { Outcome, Trial, Way } from './closedLoopTrial.ts';
import { ROOMS } from './scene.ts';

/*
 * Does a hand that obeys the page find the resonance? It passes one, is flagged, and goes back by the distance that the
 * page tells, 0.3 s late; beside it the same hand that has the level alone. The fork dies meanwhile, and every second
 * trial it is struck once more. The column is a one-pole resonator that follows the hand block by block; the stages are
 * those of the page.
 * usage: npm run bench:closed-loop -- [--count 200] [--first 1] [--room "talk 0 dB"] [--list]
 *   --count  trials        --room  quiet, talk -10 dB, talk 0 dB (of the fork's direct sound at the pass)
 *   --first  first seed    --list  a line a trial
 */

const { values } = parseArgs({
  options: {
    count: { type: 'string', default: '200' },
    first: { type: 'string', default: '1' },
    room: { type: 'string', default: 'talk 0 dB' },
    list: { type: 'boolean', default: false },
  },
});

const WAYS: readonly Way[] = ['distance', 'level'];

interface Run {
  readonly trial: Trial;
  readonly outcomes: Readonly<Record<Way, Outcome>>;
}

const room = ROOMS.find((one) => one === values.room);
if (room === undefined) throw new RangeError(`--room must be one of ${ROOMS.join(', ')}, got ${values.room}`);

const began = performance.now();
const runs: Run[] = [];
for (let i = 0; i < Number(values.count); i += 1) {
  const seed = Number(values.first) + i;
  const trial = drawTrial(seed, room);
  const outcomes = { distance: runTrial(seed, trial, 'distance'), level: runTrial(seed, trial, 'level') };
  runs.push({ trial, outcomes });
  if (!values.list) continue;
  const { scene } = trial;
  const told = WAYS.map(
    (way) => `${way} ${outcomes[way].offMm.map((mm) => mm.toFixed(1)).join(', ') || 'not flagged'} mm`,
  );
  console.log(
    `  ${seed} ${scene.nominalHz} Hz ${scene.closed ? 'closed' : 'open'} ${scene.order} rise ${scene.riseDb.toFixed(0)} dB${trial.isStruckAgain ? ' struck again' : ''}: ${told.join('; ')}`,
  );
}

const share = (part: number, whole: number): string =>
  whole === 0 ? '–' : `${((100 * part) / whole).toFixed(0)} %`;

/** Shares of the flagged trials that ended at resonance, and how far off they were. */
function cells(some: readonly Run[], way: Way): string {
  const flagged = some.map(({ outcomes }) => outcomes[way]).filter(({ isFlagged }) => isFlagged);
  const there = ALLOWED_S.map((_, i) =>
    share(flagged.filter(({ isThere }) => isThere[i]).length, flagged.length),
  );
  const off = ALLOWED_S.map((_, i) =>
    flagged.length === 0 ? '–' : median(flagged.map(({ offMm }) => Math.abs(offMm[i]))).toFixed(2),
  );
  return `${there.join(' / ')} | ${off.join(' / ')} mm`;
}

function row(name: string, holds: (trial: Trial) => boolean): void {
  const some = runs.filter(({ trial }) => holds(trial));
  if (some.length === 0) return;
  const flagged = some.filter(({ outcomes }) => outcomes.distance.isFlagged).length;
  console.log(
    `| ${name} | ${flagged} of ${some.length} | ${cells(some, 'distance')} | ${cells(some, 'level')} |`,
  );
}

const times = ALLOWED_S.map((allowedS) => `${allowedS} s`).join(' / ');
console.log(`${room}; of flagged trials, after ${times}:`);
console.log(
  '| trials | flagged | by distance: within 0.5 mm | off, median | by level: within 0.5 mm | off, median |',
);
console.log('| --- | --- | --- | --- | --- | --- |');
row('all', () => true);
row('struck once', ({ isStruckAgain }) => !isStruckAgain);
row('struck again', ({ isStruckAgain }) => isStruckAgain);
for (const order of [1, 2]) row(`order ${order}`, ({ scene }) => scene.order === order);
row('closed', ({ scene }) => scene.closed);
row('open', ({ scene }) => !scene.closed);
row('forks to 320 Hz', ({ scene }) => scene.nominalHz <= 320);
row('forks from 341 Hz', ({ scene }) => scene.nominalHz > 320);
console.log(`${((performance.now() - began) / 1000).toFixed(0)} s`);
