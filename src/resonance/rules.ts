import type { PassageRule } from './passageRule.ts';

/**
 * Weights fitted by tests/bench/detector/fitRule.ts to the tuning set of the simulator, in the order of RULE_TERMS.
 * Do not edit by hand: change the terms or the simulator, and fit anew.
 */
export const SECOND_LOOK_RULE: PassageRule = {
  threshold: 0.35,
  weights: [
    1.6457, -0.6968, 1.7159, 0.63, -0.0182, -0.2245, 0.2304, 1.4189, 1.5523, -0.4463, 1.0785, 1.3474, 0.1903,
    0.4673,
  ],
};

export const LIVE_RULE: PassageRule = {
  threshold: 0.35,
  weights: [
    0.2578, -0.6937, 0.9339, 0.7311, 0.3086, -0.3658, 0.1682, 2.5186, 2.6505, -0.731, 0.9981, 2.0598, 0.4193,
    0.297,
  ],
};
