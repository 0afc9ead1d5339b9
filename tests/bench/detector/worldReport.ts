import {
  candidates,
  COMPETITORS,
  flagsAbove,
  THRESHOLDS_DB,
  type Candidate,
  type CompetitorName,
} from './competitors.ts';
import { listenTo, type HeardFlag } from './listenTo.ts';
import {
  addScores,
  f1,
  NO_SCORE,
  precision,
  quantile,
  recall,
  score,
  type Flag,
  type Score,
} from './score.ts';
import type { WorldEntry, WorldTruth } from './worldSound.ts';

/** What all detectors made of one recording of a world. */
interface WorldOutcome {
  readonly truth: WorldTruth;
  readonly online: readonly HeardFlag[];
  readonly offline: readonly HeardFlag[];
  /** One list for each simpler tool that was asked. */
  readonly competitors: readonly (readonly Candidate[])[];
}

/** Probabilities that are told together. */
const BINS = [0, 0.5, 0.7, 0.8, 0.9, 0.95, 1.0001] as const;

/** @property list  name every mistake @property competitors  ask the simpler tools too */
export interface WorldReport {
  readonly list: boolean;
  readonly competitors: boolean;
}

/** All worlds side by side: what every detector reaches, and how far probabilities can be believed. */
export function reportWorlds(entries: readonly WorldEntry[], { list, competitors }: WorldReport): void {
  const names = competitors ? COMPETITORS : [];
  const outcomes = entries.map((entry) => hearWorld(entry, names));
  const worlds = [...new Set(outcomes.map(({ truth }) => truth.world))];
  console.log(`${'detector'.padEnd(34)}${worlds.map((world) => head(world, outcomes)).join('')}`);
  for (const { name, flags } of detectors(outcomes, names)) {
    const scores = worlds.map((world) => scoreOf(outcomes, world, flags));
    console.log(`${name.padEnd(34)}${scores.map((one) => figures(one).padEnd(36)).join('')}`);
  }
  for (const which of ['online', 'offline'] as const) printReliability(outcomes, worlds, which);
  if (list) for (const outcome of outcomes) printMistakes(outcome);
}

function hearWorld(entry: WorldEntry, names: readonly CompetitorName[]): WorldOutcome {
  const { samples, sampleRateHz, truth } = entry.make();
  const { nominalHz } = truth;
  return {
    truth,
    online: listenTo(samples, sampleRateHz, nominalHz, { live: true }).flags,
    offline: listenTo(samples, sampleRateHz, nominalHz, {}).flags,
    competitors: names.map((name) => candidates(name, samples, sampleRateHz, nominalHz)),
  };
}

interface Detector {
  readonly name: string;
  readonly flags: (outcome: WorldOutcome) => readonly Flag[];
}

function detectors(outcomes: readonly WorldOutcome[], names: readonly CompetitorName[]): Detector[] {
  const sure = (flags: readonly HeardFlag[]): HeardFlag[] =>
    flags.filter(({ certainty }) => certainty === 'sure');
  return [
    { name: 'online', flags: ({ online }) => online },
    { name: 'online, sure alone', flags: ({ online }) => sure(online) },
    { name: 'offline', flags: ({ offline }) => offline },
    { name: 'offline, sure alone', flags: ({ offline }) => sure(offline) },
    ...names.map((name, index) => {
      const flagsAt = (thresholdDb: number) => (outcome: WorldOutcome) =>
        flagsAbove(outcome.competitors[index] ?? [], thresholdDb);
      const reached = THRESHOLDS_DB.map((db) => f1(scoreOf(outcomes, null, flagsAt(db))) ?? 0);
      const bestDb = THRESHOLDS_DB[reached.indexOf(Math.max(...reached))] ?? 1;
      return { name: `${name}, ${bestDb} dB`, flags: flagsAt(bestDb) };
    }),
  ];
}

/** @param world  null: all of them */
const scoreOf = (outcomes: readonly WorldOutcome[], world: string | null, flags: Detector['flags']): Score =>
  addScores([
    NO_SCORE,
    ...outcomes
      .filter(({ truth }) => world === null || truth.world === world)
      .map((outcome) => score(flags(outcome), outcome.truth.passages)),
  ]);

function head(world: string, outcomes: readonly WorldOutcome[]): string {
  const own = outcomes.filter(({ truth }) => truth.world === world);
  const passages = own.flatMap(({ truth }) => truth.passages).filter(({ audible }) => audible);
  return `${world}: ${own.length} recordings, ${passages.length} passages`.padEnd(36);
}

function figures(reached: Score): string {
  const told = [precision(reached), recall(reached), f1(reached)].map((value) => number(value, 3));
  const delays = [0.5, 0.95].map((share) => number(quantile(reached.delaysS, share), 2));
  const isLive = reached.delaysS.length > 0;
  return `${told.join(' ')} ${reached.falseAlarms} false${isLive ? ` ${delays.join('/')} s` : ''}`;
}

/** Of flags told so probable, how many are right. */
function printReliability(
  outcomes: readonly WorldOutcome[],
  worlds: readonly string[],
  which: 'online' | 'offline',
): void {
  console.log(`\n${which}: flags right, of those told`);
  for (let bin = 0; bin + 1 < BINS.length; bin += 1) {
    const cells = worlds.map((world) => {
      const told = outcomes
        .filter(({ truth }) => truth.world === world)
        .flatMap((outcome) => judgedFlags(outcome, which))
        .filter(({ probability }) => probability >= BINS[bin] && probability < BINS[bin + 1]);
      const right = told.filter(({ isRight }) => isRight).length;
      const mean = told.reduce((sum, { probability }) => sum + probability, 0) / Math.max(1, told.length);
      const share = told.length === 0 ? '–' : (right / told.length).toFixed(2);
      return `${right} of ${told.length}: ${share}, told ${told.length === 0 ? '–' : mean.toFixed(2)}`.padEnd(
        36,
      );
    });
    console.log(`${`${BINS[bin]} to ${Math.min(1, BINS[bin + 1])}`.padEnd(34)}${cells.join('')}`);
  }
}

/** Flags that count, each with whether it is right. */
const judgedFlags = (
  outcome: WorldOutcome,
  which: 'online' | 'offline',
): { readonly probability: number; readonly isRight: boolean }[] =>
  outcome[which].flatMap((flag) => {
    const { hits, falseAlarms } = score([flag], outcome.truth.passages);
    return hits + falseAlarms === 0 ? [] : [{ probability: flag.probability, isRight: hits > 0 }];
  });

function printMistakes(outcome: WorldOutcome): void {
  const { world, condition, seed, passages } = outcome.truth;
  for (const which of ['online', 'offline'] as const) {
    const flags = outcome[which];
    const told = [
      ...passages
        .filter((passage) => passage.audible && score(flags, [passage]).hits === 0)
        .map(({ timeS, riseDb }) => `missed ${timeS.toFixed(2)} s (rise ${riseDb.toFixed(1)} dB)`),
      ...flags
        .filter((flag) => score([flag], passages).falseAlarms > 0)
        .map(
          (flag) => `false ${flag.timeS.toFixed(2)} s (${flag.certainty}, ${flag.probability.toFixed(2)})`,
        ),
    ];
    if (told.length > 0) console.log(`  ${world}-${condition}-${seed}, ${which}: ${told.join('; ')}`);
  }
}

const number = (value: number | null, digits: number): string => value?.toFixed(digits) ?? '–';
