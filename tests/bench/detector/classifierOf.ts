import { samePassage } from '../../../src/resonance/passages/candidates.ts';
import { EARLY_THRESHOLD, JUDGEMENTS } from '../../../src/resonance/passages/lookAheads.ts';
import type { Calibration, PassageClassifier } from '../../../src/resonance/passages/passageProbability.ts';
import { jointScore, OnlineScores } from '../../../src/resonance/passages/onlineScores.ts';
import { perceptronOutput } from '../../../src/resonance/passages/perceptron.ts';
import type { Perceptron } from '../../../src/resonance/passages/perceptron.ts';
import type { Candidates, Item } from './candidateItems.ts';
import { addScores, f1, NO_SCORE, precision, recall, score } from './score.ts';
import type { Flag, Score } from './score.ts';

export type Which = 'offline' | 'online';

/**
 * Of sure flags so many are to be right: 0.97 and 0.98, and a little more, since the first threshold that does on
 * some recordings does worse on others.
 */
const SURE_PRECISION = { online: 0.9725, offline: 0.985 } as const;
/** Of thresholds that are as good to this in F1 the middle one: which of them is best is chance. */
const AS_GOOD = 0.003;
const THRESHOLDS = Array.from({ length: 40 }, (_, i) => 0.2 + 0.02 * i);

interface Judged {
  readonly item: Item;
  readonly score: number;
}

/** Two thresholds: least output of a flag, and of a sure one. */
interface Thresholds {
  readonly threshold: number;
  readonly sureThreshold: number;
}

/** A flag as the detectors would raise it, with what it was raised by. */
interface JudgedFlag extends Flag, Judged {}

/** What a detector makes of the items of a recording; none that no threshold would let through. */
type Judge = (recording: Candidates) => Judged[];

const passing = (judged: readonly Judged[]): Judged[] =>
  judged.filter(({ score: output }) => output >= THRESHOLDS[0]);

const scored = (network: Perceptron, items: readonly Item[]): Judged[] =>
  items.map((item) => ({ item, score: perceptronOutput(network, item.inputs) }));

const onlineJudge =
  (network: Perceptron): Judge =>
  ({ online }) =>
    passing(scored(network, online));

/** The second look hears both networks. */
const offlineJudge =
  (network: Perceptron, online: Perceptron): Judge =>
  (recording) => {
    const heard = new OnlineScores();
    for (const { item, score: output } of scored(online, recording.online)) heard.add(item.peakIndex, output);
    return passing(
      scored(network, recording.offline).map(({ item, score: output }) => ({
        item,
        score: jointScore(output, heard.near(item.peakIndex)),
      })),
    );
  };

const judgeOf = (which: Which, network: Perceptron, online: Perceptron): Judge =>
  which === 'online' ? onlineJudge(network) : offlineJudge(network, online);

/** Flags of one recording as the detectors would raise them, from stored items. */
function flagsOf(
  { view }: Candidates,
  all: readonly Judged[],
  { threshold, sureThreshold }: Thresholds,
): JudgedFlag[] {
  const over = all.filter(
    ({ item, score: output }) =>
      output >= (item.judgement === 0 ? Math.max(threshold, EARLY_THRESHOLD) : threshold),
  );
  // Live decisions come in order of time; a maybe gives way to a sure one alone. Offline the surest come first.
  over.sort((a, b) => (a.item.decidedS ?? 0) - (b.item.decidedS ?? 0) || b.score - a.score);
  let chosen: Judged[] = [];
  for (const one of over) {
    const before = chosen.filter((other) => samePassage(view, other.item, one.item));
    const isMaybe = one.score < sureThreshold;
    if (before.some((other) => isMaybe || other.score >= sureThreshold)) continue;
    chosen = [...chosen.filter((other) => !before.includes(other)), one];
  }
  return chosen.map((one) => ({ ...one, timeS: one.item.timeS, flaggedAtS: one.item.decidedS }));
}

const worldsOf = (recordings: readonly Candidates[]): string[] => [
  ...new Set(recordings.map(({ truth }) => truth.world)),
];

/** Scores of each world. @param least  output from which flags count */
function scoreWorlds(
  recordings: readonly Candidates[],
  all: readonly (readonly Judged[])[],
  thresholds: Thresholds,
  least: number,
): Map<string, Score> {
  const worlds = new Map<string, Score>();
  recordings.forEach((recording, i) => {
    const { world, passages } = recording.truth;
    const flags = flagsOf(recording, all[i], thresholds).filter((flag) => flag.score >= least);
    worlds.set(world, addScores([worlds.get(world) ?? NO_SCORE, score(flags, passages)]));
  });
  return worlds;
}

/** As it is written down: more digits would only make the page larger. */
const short = (x: number): number => Number(x.toFixed(3));

/** Of four networks' hidden units no single weight matters: a digit is enough for them, and no figure below changes by it. */
const shortest = (x: number): number => Number(x.toFixed(1));

const rounded = ({ mean, scale, hidden, output }: Perceptron): Perceptron => ({
  mean: mean.map(short),
  scale: scale.map(short),
  hidden: hidden.map((row) => row.map(shortest)),
  output: output.map(short),
});

const meanOf = (values: readonly (number | null)[]): number =>
  values.reduce<number>((sum, value) => sum + (value ?? 0), 0) / Math.max(1, values.length);

/**
 * Gives a network its thresholds and its calibration, from recordings that it hasn't learned from. Every world counts alike.
 * @param online  the online detector's network, which the offline detector hears as well
 */
export function classifierOf(
  trained: Perceptron,
  which: Which,
  online: Perceptron,
  kept: readonly Candidates[],
): PassageClassifier {
  const network = rounded(trained);
  const all = kept.map(judgeOf(which, network, online));
  const reached = THRESHOLDS.map((at) => {
    const thresholds = { threshold: at, sureThreshold: at };
    return meanOf([...scoreWorlds(kept, all, thresholds, at).values()].map(f1));
  });
  const good = THRESHOLDS.filter((_, i) => reached[i] >= Math.max(...reached) - AS_GOOD);
  const threshold = good[good.length >> 1];
  const isSureEnough = (sureThreshold: number): boolean => {
    const scores = scoreWorlds(kept, all, { threshold, sureThreshold }, sureThreshold);
    return meanOf([...scores.values()].map(precision)) >= SURE_PRECISION[which];
  };
  const sureThreshold =
    THRESHOLDS.find((at) => at >= threshold && isSureEnough(at)) ?? THRESHOLDS[THRESHOLDS.length - 1];
  const flags = kept.flatMap((recording, i) =>
    flagsOf(recording, all[i], { threshold, sureThreshold }).flatMap((flag) => {
      const alone = score([flag], recording.truth.passages);
      const isCounted = alone.hits + alone.falseAlarms > 0;
      return isCounted
        ? [{ score: flag.score, judgement: flag.item.judgement ?? 0, isRight: alone.hits > 0 }]
        : [];
    }),
  );
  return {
    ...network,
    threshold: short(threshold),
    sureThreshold: short(sureThreshold),
    calibration: calibrate(flags, which === 'online' ? JUDGEMENTS.length : 1).map(({ offset, slope }) => ({
      offset: short(offset),
      slope: short(slope),
    })),
  };
}

/**
 * Platt's scaling: the log-odds of being right as a line over those of the output, by the maximum of the likelihood. The
 * judgements share the slope, and their offsets lie near to each other unless the flags say otherwise.
 * @see Platt 1999, Advances in Large Margin Classifiers, 61
 */
function calibrate(
  flags: readonly { readonly score: number; readonly judgement: number; readonly isRight: boolean }[],
  judgements: number,
): Calibration[] {
  let slope = 1;
  let offset = 0;
  const own = Array.from({ length: judgements }, () => 0);
  for (let pass = 0; pass < 20_000; pass += 1) {
    let [toSlope, toOffset] = [1 - slope, 0];
    const toOwn = own.map((value) => -4 * value);
    for (const { score: output, judgement, isRight } of flags) {
      const odds = Math.log(output / (1 - output + 1e-6));
      const error = (isRight ? 1 : 0) - 1 / (1 + Math.exp(-(offset + own[judgement] + slope * odds)));
      toSlope += error * odds;
      toOffset += error;
      toOwn[judgement] += error;
    }
    const rate = 0.1 / Math.max(1, flags.length);
    slope += rate * toSlope;
    offset += rate * toOffset;
    toOwn.forEach((value, judgement) => (own[judgement] += rate * value));
  }
  return own.map((value) => ({ offset: offset + value, slope }));
}

/** What a classifier reaches on these recordings, world by world and for every condition. */
export function printByWorld(
  classifier: PassageClassifier,
  which: Which,
  online: Perceptron,
  recordings: readonly Candidates[],
): void {
  const all = recordings.map(judgeOf(which, classifier, online));
  for (const [name, least] of [
    ['all flags', classifier.threshold],
    ['sure ones', classifier.sureThreshold],
  ] as const) {
    for (const [world, reached] of scoreWorlds(recordings, all, classifier, least)) {
      console.log(`${which}, ${name}, ${world}: ${told(reached)}`);
    }
  }
  for (const world of worldsOf(recordings)) {
    const own = recordings.flatMap((recording, i) =>
      recording.truth.world === world ? [{ recording, all: all[i] }] : [],
    );
    for (const condition of new Set(own.map(({ recording }) => recording.truth.condition))) {
      const some = own.filter(({ recording }) => recording.truth.condition === condition);
      const reached = addScores(
        some.map((one) => score(flagsOf(one.recording, one.all, classifier), one.recording.truth.passages)),
      );
      console.log(`  ${world} ${condition.padEnd(24)} ${told(reached)}`);
    }
  }
}

const told = (reached: Score): string =>
  `${reached.hits} of ${reached.audible}, false ${reached.falseAlarms}, precision ${precision(reached)?.toFixed(3) ?? '–'}, ` +
  `recall ${recall(reached)?.toFixed(3) ?? '–'}, F1 ${f1(reached)?.toFixed(3) ?? '–'}`;
