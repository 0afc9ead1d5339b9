import type { PassageRule } from '../../../src/resonance/passageRule.ts';
import { Random } from './random.ts';

/** One example: the terms' values, whether it is a passage, and how much it counts. */
export interface Example {
  readonly values: readonly number[];
  readonly hit: boolean;
}

const VIEWS = 6;
const BATCH = 256;
/** A missed passage counts as much as this many false alarms while fitting; the threshold sets the balance later. */
const HIT_WEIGHT = 3;
const RIDGE = 1e-4;

/**
 * Fits a rule's weights by the maximum of the likelihood, with small random batches.
 * @param choose  the examples of each of the rounds, given the rule so far (null in the first)
 * @see Kingma & Ba 2015, Adam (the step sizes)
 */
export function trainRule(
  choose: (rule: PassageRule | null) => readonly Example[],
  rounds: number,
  seed: number,
): PassageRule {
  const random = new Random(seed);
  const first = choose(null);
  const terms = first[0]?.values.length ?? 0;
  const { centre, scale } = standardise(first, terms);
  // views × terms weights, then the output's constant and weights.
  const size = VIEWS * terms + VIEWS + 1;
  const w = new Float64Array(size);
  for (let i = 0; i < VIEWS * terms; i += 1) w[i] = random.gauss() / Math.sqrt(terms);
  for (let k = 0; k < VIEWS; k += 1) w[VIEWS * terms + 1 + k] = random.gauss() / Math.sqrt(VIEWS);
  w[VIEWS * terms] = -3;
  const m = new Float64Array(size);
  const v = new Float64Array(size);
  const gradient = new Float64Array(size);
  const views = new Float64Array(VIEWS);
  let steps = 0;
  let rule: PassageRule | null = null;
  for (let round = 0; round < rounds; round += 1) {
    const examples = rule === null ? first : choose(rule);
    const scaled = examples.map(({ values }) =>
      Float64Array.from(values, (x, j) =>
        Math.max(-4, Math.min(4, (x - (centre[j] as number)) / (scale[j] as number))),
      ),
    );
    const order = examples.map((_, i) => i);
    for (let pass = 0; pass < 6; pass += 1) {
      const rate = 3e-3 * (1 - (0.9 * (6 * round + pass)) / (6 * rounds));
      shuffle(order, random);
      for (let start = 0; start < order.length; start += BATCH) {
        const batch = order.slice(start, start + BATCH);
        gradient.fill(0);
        for (const index of batch) {
          const x = scaled[index] as Float64Array;
          let sum = w[VIEWS * terms] as number;
          for (let k = 0; k < VIEWS; k += 1) {
            let weighed = 0;
            for (let j = 0; j < terms; j += 1) weighed += (w[k * terms + j] as number) * (x[j] as number);
            views[k] = Math.tanh(weighed);
            sum += (w[VIEWS * terms + 1 + k] as number) * (views[k] as number);
          }
          const { hit } = examples[index] as Example;
          const error = (1 / (1 + Math.exp(-sum)) - (hit ? 1 : 0)) * (hit ? HIT_WEIGHT : 1);
          gradient[VIEWS * terms] = (gradient[VIEWS * terms] as number) + error;
          for (let k = 0; k < VIEWS; k += 1) {
            const out = VIEWS * terms + 1 + k;
            const view = views[k] as number;
            gradient[out] = (gradient[out] as number) + error * view;
            const back = error * (w[out] as number) * (1 - view * view);
            for (let j = 0; j < terms; j += 1) {
              gradient[k * terms + j] = (gradient[k * terms + j] as number) + back * (x[j] as number);
            }
          }
        }
        steps += 1;
        for (let i = 0; i < size; i += 1) {
          const g = (gradient[i] as number) / batch.length + RIDGE * (w[i] as number);
          m[i] = 0.9 * (m[i] as number) + 0.1 * g;
          v[i] = 0.999 * (v[i] as number) + 0.001 * g * g;
          const mean = (m[i] as number) / (1 - 0.9 ** steps);
          const spread = Math.sqrt((v[i] as number) / (1 - 0.999 ** steps)) + 1e-8;
          w[i] = (w[i] as number) - (rate * mean) / spread;
        }
      }
    }
    rule = {
      centre,
      scale,
      views: Array.from({ length: VIEWS }, (_, k) => Array.from(w.slice(k * terms, (k + 1) * terms))),
      output: Array.from(w.slice(VIEWS * terms)),
      threshold: 0.5,
    };
  }
  return rule as PassageRule;
}

function standardise(examples: readonly Example[], terms: number): { centre: number[]; scale: number[] } {
  const centre: number[] = [0];
  const scale: number[] = [1];
  for (let j = 1; j < terms; j += 1) {
    let [sum, squares] = [0, 0];
    for (const { values } of examples) {
      sum += values[j] as number;
      squares += (values[j] as number) ** 2;
    }
    const mean = sum / examples.length;
    centre.push(mean);
    scale.push(Math.sqrt(Math.max(1e-4, squares / examples.length - mean * mean)));
  }
  return { centre, scale };
}

function shuffle(order: number[], random: Random): void {
  for (let i = order.length - 1; i > 0; i -= 1) {
    const j = Math.floor(random.next() * (i + 1));
    [order[i], order[j]] = [order[j] as number, order[i] as number];
  }
}
