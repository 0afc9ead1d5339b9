import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import type { Perceptron } from '../../../src/resonance/passages/perceptron.ts';
import { OFFLINE_CLASSIFIER, ONLINE_CLASSIFIER } from '../../../src/resonance/passages/perceptronWeights.ts';
import { candidatesOf } from './candidateItems.ts';
import type { Candidates } from './candidateItems.ts';
import { classifierOf, printByWorld } from './classifierOf.ts';
import { APART_CONDITIONS } from './scenario.ts';
import { trainPerceptron } from './trainPerceptron.ts';
import { variedWorld } from './variedWorld.ts';
import { VOICES_OPTION, voicesOrEnd } from './voices/chooseVoices.ts';
import { weightsFile } from './weightsFile.ts';
import { folderWorld, ownWorld } from './worldSound.ts';

/**
 * Trains the two classifiers on recordings of several worlds and writes them to
 * src/resonance/passages/perceptronWeights.ts. A passage is known by its time alone; which of the candidates there stands
 * for it, the training finds itself: the most probable one under the network of the round before. Four of five seeds are
 * trained on; the fifth sets thresholds and calibration. `--leave-out` keeps a whole world out of the training, to see
 * how a world sounds that nobody has learned from; such a run writes nothing.
 */
const { values: args } = parseArgs({
  options: {
    /** Recordings a condition of the bench's own simulator, and of its varied world. */
    each: { type: 'string', default: '92' },
    varied: { type: 'string', default: '30' },
    /** Seeds that divide by five, at least, of either. */
    kept: { type: 'string', default: '6' },
    /** Folders of recordings that another simulator has written, see renderWorld.ts; with commas between. */
    folders: { type: 'string', default: '' },
    'leave-out': { type: 'string' },
    /** Go on from the weights there are, or from another file of weights, instead of from chance. */
    'go-on': { type: 'boolean', default: false },
    /** Keep the weights there are; only thresholds and calibration are set anew. */
    'calibrate-only': { type: 'boolean', default: false },
    /** Folder for the tone series, so that training again needs no new simulation. */
    cache: { type: 'string' },
    voices: VOICES_OPTION,
    dry: { type: 'boolean', default: false },
  },
});

const voices = voicesOrEnd(args.voices);
console.log(`Voices: ${voices.kind}.`);
/** The first so many seeds to train on, and as many that divide by five as are to be kept. */
const chosen = (seed: number, first: number): boolean => seed <= first || seed % 5 === 0;
const [each, varied, kept] = [args.each, args.varied, args.kept].map(Number);
const entries = [
  ...ownWorld('tune', Math.max(each, 5 * kept), voices).filter(({ seed }) => chosen(seed, each)),
  ...variedWorld(1, Math.max(varied, 5 * kept), voices).filter(({ seed }) => chosen(seed, varied)),
  ...args.folders
    .split(',')
    .filter((folder) => folder !== '')
    .flatMap(folderWorld),
];
const recordings = entries.map((entry) => candidatesOf(entry, args.cache ?? null));
const leftOut = args['leave-out'] ?? null;

/**
 * Trains on what is found in these recordings, the late judgement's left out: trained on them too, the network flags as
 * much as is right, but later (95 % within 1.6 s instead of 1.4).
 */
function train(which: 'offline' | 'online', start: Perceptron | null): Perceptron {
  const own = recordings.filter(({ kept, truth }) => !kept && truth.world !== leftOut);
  const count = (world: string): number => own.filter(({ truth }) => truth.world === world).length;
  const worlds = new Set(own.map(({ truth }) => truth.world));
  const weights = new Map(
    [...worlds].map((world) => [world, Math.sqrt(own.length / worlds.size / count(world))]),
  );
  const examples = own.flatMap((recording, number) =>
    recording[which]
      .filter(({ passage, judgement }) => (passage === null || passage.audible) && judgement !== 2)
      // Each judgement of a passage has its own best: an early one need not be as sure as a patient one.
      .map(({ inputs, passage, judgement }) => ({
        inputs,
        weight: weights.get(recording.truth.world) ?? 1,
        passage: passage === null ? null : `${number} ${passage.timeS} ${judgement}`,
      })),
  );
  return trainPerceptron(examples, 1, start);
}

const isApart = (condition: string): boolean => APART_CONDITIONS.some((apart) => apart === condition);

function trainAndTell(which: 'offline' | 'online', start: Perceptron) {
  const network = args['calibrate-only'] ? start : train(which, args['go-on'] ? start : null);
  const isTold = ({ kept, truth }: Candidates): boolean =>
    (kept || truth.world === leftOut) && !isApart(truth.condition);
  const classifier = classifierOf(
    network,
    which,
    recordings.filter(({ kept, truth }) => kept && truth.world !== leftOut && !isApart(truth.condition)),
  );
  console.log(which, classifier.threshold, classifier.sureThreshold, JSON.stringify(classifier.calibration));
  printByWorld(classifier, which, recordings.filter(isTold));
  return classifier;
}

const online = trainAndTell('online', ONLINE_CLASSIFIER);
const offline = trainAndTell('offline', OFFLINE_CLASSIFIER);
if (!args.dry && leftOut === null) {
  const path = new URL('../../../src/resonance/passages/perceptronWeights.ts', import.meta.url);
  writeFileSync(path, weightsFile({ offline, online }));
}
