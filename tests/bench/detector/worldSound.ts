import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { recordingSet, type SetEntry, type SetName } from './recordingSet.ts';
import { simulate } from './simulate.ts';
import type { Passage } from './truth.ts';
import type { Voices } from './voices/voices.ts';
import { readWav, type WavSound } from './wav.ts';

/** A passage as far as a score needs it. */
export type HeardPassage = Pick<Passage, 'timeS' | 'fromS' | 'toS' | 'halfWidthS' | 'riseDb' | 'audible'>;

/** What is true of one recording of any world. */
export interface WorldTruth {
  readonly world: string;
  readonly condition: string;
  readonly seed: number;
  readonly durationS: number;
  /** The stamp of the fork to listen for. */
  readonly nominalHz: number;
  readonly passages: readonly HeardPassage[];
}

/** One recording of a world; it is made or read when it is asked for. */
export interface WorldEntry {
  readonly world: string;
  readonly condition: string;
  readonly seed: number;
  make(): WavSound & { readonly truth: WorldTruth };
}

/** The recordings of a set of the bench's own simulator. */
export function ownWorld(set: SetName, each: number | null, voices: Voices): WorldEntry[] {
  return recordingSet(set, each).map((entry) => ownRecording(entry, voices));
}

/** One recording of the bench's own simulator. */
export function ownRecording({ scenario, seed }: SetEntry, voices: Voices): WorldEntry {
  return {
    world: 'own',
    condition: scenario.condition,
    seed,
    make: () => {
      const { samples, sampleRateHz, truth } = simulate(scenario, seed, voices);
      const { condition, durationS, nominalHz, passages } = truth;
      return {
        samples,
        sampleRateHz,
        truth: { world: 'own', condition, seed, durationS, nominalHz, passages },
      };
    },
  };
}

/** Crossings of a resonance that are nearer to each other than this are one passage, s. */
const ONE_PASSAGE_S = 0.4;

/** What stands beside a recording of another simulator, as far as it is read. */
interface RecordingFile {
  readonly nominalHz: number;
  readonly kind: string;
  readonly crossings: readonly {
    readonly timeS: number;
    readonly riseDb: number;
    /** Whether an ear could tell. */
    readonly care: boolean;
  }[];
}

/** Recordings that another program has written: SEED.wav and SEED.json each. The world is called like the folder. */
export function folderWorld(folder: string): WorldEntry[] {
  const world = basename(folder);
  return readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => {
      const file = JSON.parse(readFileSync(join(folder, name), 'utf8')) as RecordingFile;
      const seed = Number(basename(name, '.json'));
      const condition = file.kind;
      return { world, condition, seed, make: () => readRecording(folder, world, seed, file) };
    });
}

function readRecording(
  folder: string,
  world: string,
  seed: number,
  { nominalHz, kind, crossings }: RecordingFile,
): ReturnType<WorldEntry['make']> {
  const sound = readWav(readFileSync(join(folder, `${seed}.wav`)));
  if (sound === null) throw new Error(`${seed}.wav: 16-bit linear PCM is needed.`);
  const durationS = sound.samples.length / sound.sampleRateHz;
  const passages = onePerVisit(crossings);
  return { ...sound, truth: { world, condition: kind, seed, durationS, nominalHz, passages } };
}

/** Crossings in order of time, those of one visit to a resonance together. */
function onePerVisit(crossings: RecordingFile['crossings']): HeardPassage[] {
  const visits: HeardPassage[] = [];
  for (const { timeS, riseDb, care } of crossings) {
    const last = visits.at(-1);
    if (last !== undefined && timeS - last.toS < ONE_PASSAGE_S) {
      visits.pop();
      const middleS = (last.fromS + timeS) / 2;
      visits.push({
        timeS: middleS,
        fromS: last.fromS,
        toS: timeS,
        halfWidthS: 0,
        riseDb: Math.max(last.riseDb, riseDb),
        audible: last.audible || care,
      });
    } else {
      visits.push({ timeS, fromS: timeS, toS: timeS, halfWidthS: 0, riseDb, audible: care });
    }
  }
  return visits;
}
