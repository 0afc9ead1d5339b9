import { COMPETITORS, flagsAbove, THRESHOLDS_DB } from './competitors.ts';
import type { Heard } from './listenTo.ts';
import type { RecordingOutcome } from './runPart.ts';
import { APART_CONDITIONS, SLIDE_CONDITIONS } from './scenario.ts';
import { addScores, f1, precision, quantile, recall, score, type Flag, type Score } from './score.ts';

/** A detector as a function from a recording to its flags. */
interface Detector {
  readonly name: string;
  readonly flags: (outcome: RecordingOutcome) => readonly Flag[];
}

/** Per condition and in all: precision, recall, F1, timing error and delay of every detector. */
export function printSlides(outcomes: readonly RecordingOutcome[], list: boolean): void {
  for (const detector of [...benches(outcomes), ...bestCompetitors(outcomes)]) {
    const scoreOf = (some: readonly RecordingOutcome[]): Score =>
      addScores(some.map((outcome) => score(detector.flags(outcome), outcome.truth.passages)));
    console.log(`${detector.name}\n${HEAD}`);
    for (const condition of SLIDE_CONDITIONS) {
      const some = outcomes.filter((outcome) => outcome.truth.condition === condition);
      if (some.length > 0) console.log(row(condition, some.length, scoreOf(some)));
    }
    const main = outcomes.filter((outcome) => !APART_CONDITIONS.includes(outcome.truth.condition));
    console.log(row('all but the three marked *', main.length, scoreOf(main)));
    console.log(`${row('all', outcomes.length, scoreOf(outcomes))}\n`);
    if (list) printMistakes(detector, outcomes);
  }
}

/** How near the fork's frequency came, and how often the stated uncertainty (twice it) covers the error. */
export function printFrequencies(outcomes: readonly RecordingOutcome[]): void {
  const detectors: readonly [string, (outcome: RecordingOutcome) => Heard | null][] = [
    ['online', (outcome) => outcome.online],
    ['offline', (outcome) => outcome.offline],
  ];
  for (const [name, heardBy] of detectors) {
    const errorsMhz: number[] = [];
    const ratios: number[] = [];
    let asked = 0;
    for (const outcome of outcomes) {
      const heard = heardBy(outcome);
      if (outcome.truth.fork === null || heard === null) continue;
      asked += 1;
      if (heard.frequencyHz === null) continue;
      const error = Math.abs(heard.frequencyHz - outcome.truth.fork.actualHz);
      errorsMhz.push(1000 * error);
      if (heard.frequencyUncertaintyHz !== null) ratios.push(error / heard.frequencyUncertaintyHz);
    }
    if (asked === 0) continue;
    const covered = (times: number): string =>
      `${((100 * ratios.filter((ratio) => ratio <= times).length) / Math.max(1, ratios.length)).toFixed(0)} %`;
    console.log(
      `Fork's frequency, ${name}: told in ${errorsMhz.length} of ${asked}; error median ` +
        `${number(quantile(errorsMhz, 0.5), 1)} mHz, 90th percentile ${number(quantile(errorsMhz, 0.9), 1)} mHz; ` +
        `within u ${covered(1)}, within 2 u ${covered(2)}`,
    );
  }
  const workS = outcomes.flatMap((outcome) => (outcome.online === null ? [] : [outcome.online.workS]));
  const soundS = outcomes.reduce(
    (sum, outcome) => sum + (outcome.online === null ? 0 : outcome.truth.durationS),
    0,
  );
  if (soundS > 0) {
    const work = workS.reduce((sum, each) => sum + each, 0);
    console.log(`Online work: ${((1000 * work) / soundS).toFixed(1)} ms for a second of sound\n`);
  }
}

/** Verdicts of the checks of a length. */
export function printChecks(outcomes: readonly RecordingOutcome[], list: boolean): void {
  let right = 0;
  let wrong = 0;
  for (const { truth, check } of outcomes) {
    const verdict = check?.verdict ?? null;
    if (verdict === truth.checkVerdict) right += 1;
    else if (verdict === 'resonant' || verdict === 'not-resonant') wrong += 1;
    if (list && verdict !== truth.checkVerdict) {
      console.log(
        `  ${truth.condition}-${truth.seed}${truth.hard ? ' (hard)' : ''}: ${verdict ?? 'no verdict'}, rise ${number(check?.riseDb ?? null, 1)} dB`,
      );
    }
  }
  console.log(
    `Check a length, ${outcomes.length} recordings: ${right} right, ${wrong} wrong, ` +
      `${outcomes.length - right - wrong} can't tell; ` +
      `${outcomes.filter((outcome) => outcome.truth.hard).length} of them hard: off resonance, yet up by over 3 dB`,
  );
}

function benches(outcomes: readonly RecordingOutcome[]): Detector[] {
  const all: Detector[] = [
    { name: 'BENCH, ONLINE', flags: (outcome) => outcome.online?.flags ?? [] },
    { name: 'BENCH, OFFLINE', flags: (outcome) => outcome.offline?.flags ?? [] },
  ];
  return outcomes.some((outcome) => outcome.online !== null) ? all : [];
}

/** Each competitor with the threshold that gives it the highest F1 on these very recordings. */
function bestCompetitors(outcomes: readonly RecordingOutcome[]): Detector[] {
  if (outcomes.every((outcome) => outcome.competitors.length === 0)) return [];
  const main = outcomes.filter((outcome) => !APART_CONDITIONS.includes(outcome.truth.condition));
  return COMPETITORS.map((name, index) => {
    let bestDb = 1;
    let best = -1;
    for (const thresholdDb of THRESHOLDS_DB) {
      const total = addScores(
        main.map(({ competitors, truth }) =>
          score(flagsAbove(competitors[index] ?? [], thresholdDb), truth.passages),
        ),
      );
      const value = f1(total) ?? 0;
      if (value > best) [best, bestDb] = [value, thresholdDb];
    }
    return {
      name: `${name.toUpperCase()}, peaks that stand out by ${bestDb} dB (the best threshold)`,
      flags: (outcome) => flagsAbove(outcome.competitors[index] ?? [], bestDb),
    };
  });
}

const HEAD =
  '  condition                    recs  aud  hits false  prec   rec    F1 |dt| med   p95 delay med   p95';

function row(name: string, recordings: number, each: Score): string {
  const errors = each.timingErrorsS.map(Math.abs);
  const marked = (APART_CONDITIONS as readonly string[]).includes(name) ? `${name} *` : name;
  return [
    `  ${marked.padEnd(28)}`,
    String(recordings).padStart(4),
    String(each.audible).padStart(5),
    String(each.hits).padStart(6),
    String(each.falseAlarms).padStart(6),
    number(precision(each), 3).padStart(6),
    number(recall(each), 3).padStart(6),
    number(f1(each), 3).padStart(6),
    number(quantile(errors, 0.5), 3).padStart(9),
    number(quantile(errors, 0.95), 3).padStart(6),
    number(quantile(each.delaysS, 0.5), 2).padStart(10),
    number(quantile(each.delaysS, 0.95), 2).padStart(6),
  ].join('');
}

function printMistakes(detector: Detector, outcomes: readonly RecordingOutcome[]): void {
  for (const outcome of outcomes) {
    const { condition, seed, passages } = outcome.truth;
    const flags = detector.flags(outcome);
    const missed = passages.filter((passage) => passage.audible && score(flags, [passage]).hits === 0);
    const wrong = flags.filter((flag) => score([flag], passages).falseAlarms > 0);
    const told = [
      ...missed.map(
        (each) =>
          `missed ${each.timeS.toFixed(2)} s (rise ${each.riseDb.toFixed(1)}, noise ${each.aboveNoiseDb.toFixed(0)} dB, half-width ${each.halfWidthS.toFixed(2)} s)`,
      ),
      ...wrong.map((flag) => `false ${flag.timeS.toFixed(2)} s`),
    ];
    if (told.length > 0) console.log(`  ${condition}-${seed}: ${told.join('; ')}`);
  }
  console.log('');
}

function number(value: number | null, digits: number): string {
  return value === null ? '–' : value.toFixed(digits);
}
