import { parseArgs } from 'node:util';
import { checkLength, secondIsMouth } from '../../../src/resonance/lengthCheck/checkLength.ts';
import { longestDwells } from '../../../src/resonance/lengthCheck/longestSounding.ts';
import { stateStep } from '../../../src/resonance/lengthCheck/stateStep.ts';
import { judgeStep } from '../../../src/resonance/lengthCheck/stepLikelihood.ts';
import { defaultToleranceHz } from '../../../src/session/hearing/forkTolerance.ts';
import { checkLimits } from './checkLimit.ts';
import { Random } from './random.ts';
import { CHECK_CONDITIONS } from './scenario.ts';
import { seriesOf } from './toneCache.ts';
import { variedRecording } from './variedWorld.ts';
import { VOICES_OPTION, voicesOrEnd } from './voices/chooseVoices.ts';
import { folderWorld, ownRecording, type WorldEntry } from './worldSound.ts';

/**
 * Usage: node --import tsx/esm tests/bench/detector/checkRun.ts [--first SEED] [--each COUNT] [--varied COUNT]
 *          [--folders FOLDER,…] [--cache FOLDER] [--voices KIND] [--list] [--limit]
 *
 * Checks of a length over several worlds: right, wrong and "can't tell", by world and by noise. A folder's recordings
 * are called check-resonant or check-off by their `kind`. `--limit` tells what anybody could reach in the own world.
 */
const { values } = parseArgs({
  options: {
    first: { type: 'string', default: '20001' },
    each: { type: 'string', default: '20' },
    varied: { type: 'string', default: '10' },
    folders: { type: 'string', default: '' },
    cache: { type: 'string' },
    voices: VOICES_OPTION,
    list: { type: 'boolean', default: false },
    limit: { type: 'boolean', default: false },
  },
});

type Outcome = 'right' | 'wrong' | 'can’t tell';

interface CheckOutcome {
  readonly world: string;
  readonly outcome: Outcome;
  /** The fork over the room in 10 Hz, dB; null where none was heard. */
  readonly aboveNoiseDb: number | null;
  /** How it came to that, for the list. */
  readonly numbers: string;
}

/** Lower ends of the noise levels that are told apart, dB; the last one takes what wasn't heard. */
const NOISE_FROM_DB = [30, 20, 10, -Infinity] as const;
const DB_PER_NP = 20 / Math.LN10;

if (values.limit) printLimits();
else printChecks();

function printChecks(): void {
  const outcomes = entries().map(checkOutcome);
  for (const world of new Set(outcomes.map((one) => one.world))) {
    const own = outcomes.filter((one) => one.world === world);
    console.log(`${world}: ${counts(own)}`);
    for (const [i, fromDb] of NOISE_FROM_DB.entries()) {
      const belowDb = i === 0 ? Infinity : NOISE_FROM_DB[i - 1];
      const some = own.filter(({ aboveNoiseDb }) => {
        const db = aboveNoiseDb ?? -Infinity;
        return db >= fromDb && db < belowDb;
      });
      console.log(`  fork over the room in 10 Hz from ${fromDb} dB: ${counts(some)}`);
    }
  }
  if (!values.list) return;
  for (const { outcome, numbers } of outcomes) if (outcome !== 'right') console.log(`${outcome}: ${numbers}`);
}

function entries(): WorldEntry[] {
  const voices = voicesOrEnd(values.voices);
  const seeds = (count: string): number[] =>
    Array.from({ length: Number(count) }, (_, i) => Number(values.first) + i);
  return CHECK_CONDITIONS.flatMap((condition) => [
    ...seeds(values.each).map((seed) => ownRecording({ scenario: { condition }, seed }, voices)),
    ...seeds(values.varied).map((seed) => variedRecording(condition, seed, voices)),
  ]).concat(
    values.folders
      .split(',')
      .filter((folder) => folder !== '')
      .flatMap(folderWorld),
  );
}

function checkOutcome(entry: WorldEntry): CheckOutcome {
  const [{ nominalHz }, series] = seriesOf(entry, values.cache ?? null);
  const toleranceHz = defaultToleranceHz(nominalHz);
  const check = checkLength(series, toleranceHz);
  const fork = longestDwells(series, toleranceHz)?.fork ?? null;
  const step = fork === null ? null : stateStep(fork.dwells);
  const truth = entry.condition === 'check-resonant' ? 'resonant' : 'not-resonant';
  const told = [
    `${entry.world}-${entry.condition}-${entry.seed} ${check.hindrance ?? check.verdict}, ${check.comparisons} changes`,
    step === null
      ? 'no step'
      : `step ${(step.riseNp * DB_PER_NP).toFixed(1)} ± ${(step.riseUncertaintyNp * DB_PER_NP).toFixed(1)} dB, ` +
        `${step.phaseRad.toFixed(2)} ± ${step.phaseUncertaintyRad.toFixed(2)} rad`,
    fork === null || step === null
      ? 'not judged'
      : `log-odds ${judgeStep(step, secondIsMouth(fork.dwells)).logOdds.toFixed(2)}`,
    fork === null ? '' : `misfit ${fork.misfit.toFixed(2)}, ${fork.longestOutliers} outliers in a row`,
  ];
  return {
    world: entry.world,
    outcome: check.verdict === truth ? 'right' : check.verdict === 'cannot-tell' ? 'can’t tell' : 'wrong',
    // A block lasts 0.1 s, so its noise is that in 10 Hz; it moves ln|z| with the variance 1/2SNR.
    aboveNoiseDb: fork === null ? null : -10 * Math.log10(2 * fork.noiseVariance + 1e-12),
    numbers: told.join('; '),
  };
}

function counts(some: readonly CheckOutcome[]): string {
  const count = (outcome: Outcome): number => some.filter((one) => one.outcome === outcome).length;
  return `${some.length} checks: ${count('right')} right, ${count('wrong')} wrong, ${count('can’t tell')} can’t tell`;
}

function printLimits(): void {
  const random = new Random(Number(values.first));
  for (const [what, awayDb] of [
    ['one step', 3],
    ['one step, level away known', 0],
  ] as const) {
    for (const errorNp of [0.03, 0.08]) {
      for (const { cost, right, wrong } of checkLimits([40, 10, 3, 1.5], errorNp, awayDb, random)) {
        console.log(
          `${what}, error ${errorNp} Np, a wrong verdict costs ${cost}: ` +
            `${(100 * right).toFixed(1)} % right, ${(100 * wrong).toFixed(1)} % wrong`,
        );
      }
    }
  }
}
