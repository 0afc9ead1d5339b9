/**
 * A two-layer perceptron with one output. Each hidden unit is tanh of a weighted sum of the scaled inputs; the output
 * is the logistic function of a weighted sum of the hidden units.
 */
export interface Perceptron {
  /** Each input less `mean`, over `scale`, within ±4, before it is weighed; NaN counts as the mean. One value an input. */
  readonly mean: readonly number[];
  readonly scale: readonly number[];
  /** One row of weights a hidden unit, one weight an input; the first input is 1, so that its weight is the bias. */
  readonly hidden: readonly (readonly number[])[];
  /** Bias, then one weight a hidden unit. */
  readonly output: readonly number[];
}

/** Output, 0..1. */
export function perceptronOutput(network: Perceptron, inputs: ArrayLike<number>): number {
  const scaled = scaledInputs(network, inputs);
  let sum = network.output[0];
  for (let unit = 0; unit < network.hidden.length; unit += 1) sum += unitShare(network, unit, scaled);
  return logistic(sum);
}

/**
 * A bound of the output for inputs that lie between corners: it is no higher wherever each input that differs lies between
 * its two values. Each hidden unit goes one way with an input, so its highest share lies at a corner.
 * @param corners  the inputs with every choice of the ends of those that differ
 */
export function perceptronOutputAtMost(network: Perceptron, corners: readonly ArrayLike<number>[]): number {
  const scaled = corners.map((inputs) => scaledInputs(network, inputs));
  let sum = network.output[0];
  for (let unit = 0; unit < network.hidden.length; unit += 1) {
    sum += Math.max(...scaled.map((corner) => unitShare(network, unit, corner)));
  }
  return logistic(sum);
}

function scaledInputs({ mean, scale }: Perceptron, inputs: ArrayLike<number>): Float64Array {
  const scaled = new Float64Array(mean.length);
  for (let j = 0; j < scaled.length; j += 1) {
    const deviation = (inputs[j] - mean[j]) / scale[j];
    scaled[j] = Number.isNaN(deviation) ? 0 : Math.max(-4, Math.min(4, deviation));
  }
  return scaled;
}

/** What one hidden unit adds to the output's sum. */
function unitShare({ hidden, output }: Perceptron, unit: number, scaled: Float64Array): number {
  const weights = hidden[unit];
  let weighed = 0;
  for (let j = 0; j < weights.length; j += 1) weighed += weights[j] * scaled[j];
  return output[unit + 1] * Math.tanh(weighed);
}

export const logistic = (sum: number): number => 1 / (1 + Math.exp(-sum));

/** The reverse of `logistic`; finite for 0 and 1. @param probability  0..1 */
export function logOdds(probability: number): number {
  const held = Math.max(1e-6, Math.min(1 - 1e-6, probability));
  return Math.log(held / (1 - held));
}
