import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import type { PassageClassifier } from '../../../src/resonance/passages/passageProbability.ts';
import type { Perceptron } from '../../../src/resonance/passages/perceptron.ts';
import { OFFLINE_CLASSIFIER, ONLINE_CLASSIFIER } from '../../../src/resonance/passages/perceptronWeights.ts';
import { candidatesOf, isKept } from './candidateItems.ts';
import { classifierOf, printByWorld } from './classifierOf.ts';
import type { Which } from './classifierOf.ts';
import { recordedCompany } from './recorded/recordedCompany.ts';
import { recordedWorld } from './recorded/recordedWorld.ts';
import { SoundFiles } from './recorded/soundFiles.ts';
import { APART_CONDITIONS } from './scenario.ts';
import { musicToLearnFrom } from './soundAlone.ts';
import { trainPerceptron } from './trainPerceptron.ts';
import { variedWorld } from './variedWorld.ts';
import { VOICES_OPTION, voicesOrEnd } from './voices/chooseVoices.ts';
import { weightsFile } from './weightsFile.ts';
import { folderWorld, ownWorld, type WorldEntry } from './worldSound.ts';

/**
 * Trains the two classifiers on recordings of several worlds and writes them to
 * src/resonance/passages/perceptronWeights.ts. A passage is known by its time alone; which of the candidates there stands
 * for it, the training finds itself: the most probable one under the network of the round before. Four of five seeds are
 * trained on; the fifth sets thresholds and calibration. The same recordings give the same weights. `--leave-out` keeps
 * whole worlds out of training, thresholds and calibration, each in turn, to see how a world sounds that nobody has
 * learned from; such a run writes nothing.
 */
const { values: args } = parseArgs({
  options: {
    /** Recordings a condition of the bench's own simulator, and of its varied world. */
    each: { type: 'string', default: '40' },
    varied: { type: 'string', default: '100' },
    /** Minutes of music alone, in which no fork sounds. */
    music: { type: 'string', default: '120' },
    /** Seeds that divide by five, at least, of either. */
    kept: { type: 'string', default: '6' },
    /** Folders of recordings that another simulator has written, see renderWorld.ts; with commas between. */
    folders: { type: 'string', default: '' },
    /** Sounds that recorded/fetchSounds.ts fetched, and recordings a kind of them, alone and beside a fork; none without. */
    sounds: { type: 'string' },
    recorded: { type: 'string', default: '40' },
    /** Worlds, with commas between. */
    'leave-out': { type: 'string', default: '' },
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
const listed = (text: string): string[] => text.split(',').filter((name) => name !== '');
/** The first so many seeds to train on, and as many that divide by five as are to be kept. */
const chosen = (seed: number, first: number): boolean => seed <= first || isKept(seed);
const [each, varied, recorded, kept] = [args.each, args.varied, args.recorded, args.kept].map(Number);
/** Forks amid the half of the fetched sounds that may be learned from. */
const amidRecorded = (folder: string): WorldEntry[] =>
  recordedWorld(
    1,
    Math.max(recorded, 5 * kept),
    voices,
    recordedCompany(new SoundFiles(folder), 'learn'),
  ).filter(({ seed }) => chosen(seed, recorded));
const entries = [
  ...ownWorld('tune', Math.max(each, 5 * kept), voices).filter(({ seed }) => chosen(seed, each)),
  ...variedWorld(1, Math.max(varied, 5 * kept), voices).filter(({ seed }) => chosen(seed, varied)),
  ...musicToLearnFrom(700_001, Number(args.music), voices),
  ...listed(args.folders).flatMap(folderWorld),
  ...(args.sounds === undefined ? [] : amidRecorded(args.sounds)),
];
const isNeeded = ({ seed }: WorldEntry): boolean => !args['calibrate-only'] || isKept(seed);
const recordings = entries.filter(isNeeded).map((entry) => candidatesOf(entry, args.cache ?? null));

/** Trains on what is found in these recordings. @param leftOut  a world that is left out; null: none */
function train(which: Which, leftOut: string | null): Perceptron {
  const own = recordings.filter(({ kept, truth }) => !kept && truth.world !== leftOut);
  const count = (world: string): number => own.filter(({ truth }) => truth.world === world).length;
  const worlds = new Set(own.map(({ truth }) => truth.world));
  const weights = new Map(
    [...worlds].map((world) => [world, Math.sqrt(own.length / worlds.size / count(world))]),
  );
  const examples = own.flatMap((recording, number) =>
    recording[which]
      .filter(({ passage }) => passage === null || passage.audible)
      // Each judgement of a passage has its own best: an early one need not be as sure as a patient one.
      .map(({ inputs, passage, judgement }) => ({
        inputs,
        weight: weights.get(recording.truth.world) ?? 1,
        passage: passage === null ? null : `${number} ${passage.timeS} ${judgement}`,
      })),
  );
  return trainPerceptron(examples);
}

const isApart = (condition: string): boolean => APART_CONDITIONS.some((apart) => apart === condition);

/**
 * @param leftOut  a world that is only told of; null: all are learned from
 * @param heard  the online detector's network, for the offline detector; null: this is it
 */
function trainAndTell(which: Which, leftOut: string | null, heard: Perceptron | null): PassageClassifier {
  const present = which === 'online' ? ONLINE_CLASSIFIER : OFFLINE_CLASSIFIER;
  const network = args['calibrate-only'] ? present : train(which, leftOut);
  const counted = recordings.filter(({ truth }) => !isApart(truth.condition));
  const kept = counted.filter((one) => one.kept && one.truth.world !== leftOut);
  const classifier = classifierOf(network, which, heard ?? network, kept);
  console.log(which, classifier.threshold, classifier.sureThreshold, JSON.stringify(classifier.calibration));
  const told = leftOut === null ? kept : counted.filter(({ truth }) => truth.world === leftOut);
  printByWorld(classifier, which, heard ?? classifier, told);
  return classifier;
}

const leftOut = listed(args['leave-out']);
for (const world of leftOut) {
  console.log(`\n${world} left out`);
  trainAndTell('offline', world, trainAndTell('online', world, null));
}
if (leftOut.length === 0) {
  const online = trainAndTell('online', null, null);
  const offline = trainAndTell('offline', null, online);
  const path = new URL('../../../src/resonance/passages/perceptronWeights.ts', import.meta.url);
  if (!args.dry) writeFileSync(path, weightsFile({ offline, online }));
}
