import type { Perceptron } from '../../../src/resonance/passages/perceptron.ts';
import { Random } from './random.ts';

/** One candidate to learn from. */
export interface Example {
  /** NaN where one can't be told: it counts as the mean. */
  readonly inputs: ArrayLike<number>;
  /** What it counts for beside the others, so that a world of many recordings doesn't outvote the rest. */
  readonly weight: number;
  /** Names the passage that it may stand for, any text; null: a false alarm. */
  readonly passage: string | null;
}

/** As many networks are trained, each from its own chance beginning; what they err in by chance they don't share. */
const NETWORKS = 4;
const HIDDEN_UNITS = 24;
const ROUNDS = 12;
const PASSES = 6;
const BATCH = 256;
const FASTEST = 3e-3;
/** A missed passage counts as much as this many false alarms while training; the threshold sets the balance later. */
const HIT_WEIGHT = 3;
/**
 * Of the false alarms that the round before thought less probable than this, log-odds, one in so many is learned, with
 * the weight of them all: most candidates are such, and they say nothing new.
 */
const EASY = -5;
const ONE_IN = 8;
const RIDGE = 1e-4;
/** Each time that an example is learned, its scaled inputs are off by chance by so much: another world is never alike. */
const BLUR = 0.2;
/** The weights are the mean over this last share of the passes. */
const AVERAGED = 0.3;

/**
 * Trains a network by the maximum of the likelihood, with small random batches (stochastic gradient descent, Adam). In
 * the first round all candidates that may stand for a passage share its weight; then only the most probable under the
 * network of the round before counts, so the training finds itself which do. Beginning with one of each, the clearest,
 * ends in a worse network (F1 0.929 instead of 0.934 over recordings that weren't trained on). The result is the mean of
 * several networks.
 * @see Kingma & Ba 2015, Adam (the step sizes); Bishop 1995, Neural Comput. 7, 108 (noise on the inputs as a
 *   regularisation); Polyak & Juditsky 1992, SIAM J. Control Optim. 30, 838 (the mean of the last weights)
 */
export function trainPerceptron(examples: readonly Example[]): Perceptron {
  const { mean, scale } = standardise(examples);
  return committee(Array.from({ length: NETWORKS }, (_, i) => trainOne(examples, mean, scale, i + 1)));
}

function trainOne(
  examples: readonly Example[],
  mean: readonly number[],
  scale: readonly number[],
  seed: number,
): Perceptron {
  const random = new Random(seed);
  const training = new Training(examples, mean, scale, random);
  for (let round = 0; round < ROUNDS; round += 1) {
    const chosen = round === 0 ? training.chooseAll() : training.chooseBest();
    for (let pass = 0; pass < PASSES; pass += 1) {
      shuffle(chosen, random);
      const done = (PASSES * round + pass) / (PASSES * ROUNDS);
      training.pass(chosen, FASTEST * (1 - 0.9 * done));
      if (done >= 1 - AVERAGED) training.remember();
    }
  }
  return training.network();
}

/** Networks with the same inputs as one whose log-odds are the mean of theirs. */
function committee(networks: readonly Perceptron[]): Perceptron {
  const share = 1 / networks.length;
  const biases = networks.map(({ output }) => output[0]);
  return {
    ...networks[0],
    hidden: networks.flatMap(({ hidden }) => hidden),
    output: [
      share * biases.reduce((sum, bias) => sum + bias),
      ...networks.flatMap(({ output }) => output.slice(1).map((weight) => share * weight)),
    ],
  };
}

/** The weights while they are trained, with all examples' inputs side by side. */
class Training {
  private readonly examples: readonly Example[];
  /** What a passage counts for; 0 where it is a false alarm. */
  private readonly hitWeight: Float64Array;
  /** How many false alarms an example stands for. */
  private readonly standsFor: Float64Array;
  private readonly random: Random;
  private readonly mean: readonly number[];
  private readonly scale: readonly number[];
  /** How many inputs. */
  private readonly width: number;
  /** Scaled inputs, one row an example. */
  private readonly x: Float32Array;
  /** HIDDEN_UNITS × width weights, then the output's bias and weights. */
  private readonly w: Float64Array;
  private readonly gradient: Float64Array;
  private readonly firstMoment: Float64Array;
  private readonly secondMoment: Float64Array;
  private readonly hidden = new Float64Array(HIDDEN_UNITS);
  /** The inputs of the example that is being learned or judged. */
  private readonly row: Float64Array;
  private readonly blur: Blur;
  /** Mean of the weights after the last passes. */
  private readonly meanWeights: Float64Array;
  private remembered = 0;
  private steps = 0;

  constructor(
    examples: readonly Example[],
    mean: readonly number[],
    scale: readonly number[],
    random: Random,
  ) {
    this.examples = examples;
    this.hitWeight = Float64Array.from(examples, ({ passage }) => (passage === null ? 0 : HIT_WEIGHT));
    this.standsFor = new Float64Array(examples.length).fill(1);
    this.random = random.branch('easy');
    this.mean = mean;
    this.scale = scale;
    const width = mean.length;
    this.width = width;
    this.x = new Float32Array(examples.length * width);
    examples.forEach(({ inputs }, i) => {
      for (let j = 0; j < width; j += 1) {
        const scaled = (inputs[j] - mean[j]) / scale[j];
        this.x[i * width + j] = Number.isNaN(scaled) ? 0 : Math.max(-4, Math.min(4, scaled));
      }
    });
    const size = HIDDEN_UNITS * width + HIDDEN_UNITS + 1;
    this.w = new Float64Array(size);
    this.meanWeights = new Float64Array(size);
    this.row = new Float64Array(width);
    this.blur = new Blur(random);
    this.gradient = new Float64Array(size);
    this.firstMoment = new Float64Array(size);
    this.secondMoment = new Float64Array(size);
    for (let i = 0; i < HIDDEN_UNITS * width; i += 1) this.w[i] = random.gauss() / Math.sqrt(width);
    for (let k = 0; k < HIDDEN_UNITS; k += 1)
      this.w[HIDDEN_UNITS * width + 1 + k] = random.gauss() / Math.sqrt(HIDDEN_UNITS);
    this.w[HIDDEN_UNITS * width] = -3;
  }

  /** Every example; those of one passage share its weight. */
  chooseAll(): Int32Array {
    const count = new Map<string | null, number>();
    for (const { passage } of this.examples) count.set(passage, (count.get(passage) ?? 0) + 1);
    this.examples.forEach(({ passage }, i) => {
      if (passage !== null) this.hitWeight[i] = HIT_WEIGHT / (count.get(passage) as number);
    });
    return Int32Array.from(this.examples.keys());
  }

  /** False alarms, of the easy ones a few, and for each passage the most probable candidate, with all of its weight. */
  chooseBest(): Int32Array {
    const chosen: number[] = [];
    const best = new Map<string, { index: number; value: number }>();
    this.examples.forEach(({ passage }, index) => {
      this.read(index, 0);
      const value = this.evaluate();
      if (passage === null) {
        const isEasy = value < EASY;
        if (isEasy && !this.random.chance(1 / ONE_IN)) return;
        this.standsFor[index] = isEasy ? ONE_IN : 1;
        chosen.push(index);
        return;
      }
      const old = best.get(passage);
      if (old === undefined || value > old.value) best.set(passage, { index, value });
    });
    for (const { index } of best.values()) {
      this.hitWeight[index] = HIT_WEIGHT;
      chosen.push(index);
    }
    return Int32Array.from(chosen);
  }

  /** One pass over the chosen examples in their order. */
  pass(chosen: Int32Array, rate: number): void {
    for (let start = 0; start < chosen.length; start += BATCH) {
      const end = Math.min(chosen.length, start + BATCH);
      this.gradient.fill(0);
      for (let i = start; i < end; i += 1) this.learn(chosen[i]);
      this.step(end - start, rate);
    }
  }

  /** Takes the present weights into their mean. */
  remember(): void {
    this.remembered += 1;
    for (let i = 0; i < this.w.length; i += 1) {
      this.meanWeights[i] = this.meanWeights[i] + (this.w[i] - this.meanWeights[i]) / this.remembered;
    }
  }

  network(): Perceptron {
    const w = this.meanWeights;
    const width = this.width;
    return {
      mean: this.mean,
      scale: this.scale,
      hidden: Array.from({ length: HIDDEN_UNITS }, (_, k) => Array.from(w.slice(k * width, (k + 1) * width))),
      output: Array.from(w.slice(HIDDEN_UNITS * width)),
    };
  }

  /** An example's inputs, each but the constant one off by chance. @param by  how much, standard deviation */
  private read(index: number, by: number): void {
    const at = index * this.width;
    this.row[0] = this.x[at];
    for (let j = 1; j < this.width; j += 1) this.row[j] = this.x[at + j] + by * this.blur.next();
  }

  /** Logarithm of the odds of what was read; leaves the hidden units' values behind. */
  private evaluate(): number {
    const { width, w } = this;
    let sum = w[HIDDEN_UNITS * width];
    for (let k = 0; k < HIDDEN_UNITS; k += 1) {
      let weighed = 0;
      const row = k * width;
      for (let j = 0; j < width; j += 1) weighed += w[row + j] * this.row[j];
      const unit = Math.tanh(weighed);
      this.hidden[k] = unit;
      sum += w[HIDDEN_UNITS * width + 1 + k] * unit;
    }
    return sum;
  }

  private learn(index: number): void {
    const width = this.width;
    const gradient = this.gradient;
    this.read(index, BLUR);
    const hitWeight = this.hitWeight[index];
    const probability = 1 / (1 + Math.exp(-this.evaluate()));
    const share = hitWeight > 0 ? hitWeight * (probability - 1) : probability * this.standsFor[index];
    const error = share * this.examples[index].weight;
    const output = HIDDEN_UNITS * width;
    gradient[output] = gradient[output] + error;
    for (let k = 0; k < HIDDEN_UNITS; k += 1) {
      const unit = this.hidden[k];
      gradient[output + 1 + k] = gradient[output + 1 + k] + error * unit;
      const back = error * this.w[output + 1 + k] * (1 - unit * unit);
      const row = k * width;
      for (let j = 0; j < width; j += 1) {
        gradient[row + j] = gradient[row + j] + back * this.row[j];
      }
    }
  }

  private step(count: number, rate: number): void {
    this.steps += 1;
    const w = this.w;
    const unbiasFirst = 1 / (1 - 0.9 ** this.steps);
    const unbiasSecond = 1 / (1 - 0.999 ** this.steps);
    for (let i = 0; i < w.length; i += 1) {
      const g = this.gradient[i] / count + RIDGE * w[i];
      const first = 0.9 * this.firstMoment[i] + 0.1 * g;
      const second = 0.999 * this.secondMoment[i] + 0.001 * g * g;
      this.firstMoment[i] = first;
      this.secondMoment[i] = second;
      w[i] = w[i] - (rate * first * unbiasFirst) / (Math.sqrt(second * unbiasSecond) + 1e-8);
    }
  }
}

/** Normal deviates from a table that is begun anywhere each time it is through: drawing each afresh takes too long. */
class Blur {
  private readonly random: Random;
  private readonly table: Float64Array;
  private at = 0;

  constructor(random: Random) {
    this.random = random;
    this.table = Float64Array.from({ length: 65_521 }, () => random.gauss());
  }

  next(): number {
    this.at += 1;
    if (this.at >= this.table.length) this.at = Math.floor(this.random.next() * this.table.length);
    return this.table[this.at];
  }
}

/** Mean and standard deviation of every input, where it can be told. */
function standardise(examples: readonly Example[]): { mean: number[]; scale: number[] } {
  const width = examples[0]?.inputs.length ?? 0;
  const mean: number[] = [0];
  const scale: number[] = [1];
  for (let j = 1; j < width; j += 1) {
    let [count, sum, squares] = [0, 0, 0];
    for (const { inputs } of examples) {
      if (Number.isNaN(inputs[j])) continue;
      count += 1;
      sum += inputs[j];
      squares += inputs[j] ** 2;
    }
    const average = sum / Math.max(1, count);
    mean.push(average);
    scale.push(Math.sqrt(Math.max(1e-4, squares / Math.max(1, count) - average * average)));
  }
  return { mean, scale };
}

function shuffle(order: Int32Array, random: Random): void {
  for (let i = order.length - 1; i > 0; i -= 1) {
    const j = Math.floor(random.next() * (i + 1));
    const moved = order[i];
    order[i] = order[j];
    order[j] = moved;
  }
}
