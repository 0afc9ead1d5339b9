/**
 * Phasor of a tone over a stretch: 2/N · Σ x·e^(-jωt), so that its size is the amplitude of a sine.
 * @param frames  best a whole number of periods
 */
export function phasor(
  samples: Float32Array,
  start: number,
  frames: number,
  frequencyHz: number,
  sampleRateHz: number,
): { size: number; angleRad: number } {
  let re = 0;
  let im = 0;
  for (let i = start; i < start + frames; i += 1) {
    const angle = (2 * Math.PI * frequencyHz * i) / sampleRateHz;
    re += (samples[i] ?? 0) * Math.cos(angle);
    im -= (samples[i] ?? 0) * Math.sin(angle);
  }
  return { size: (2 * Math.hypot(re, im)) / frames, angleRad: Math.atan2(im, re) };
}

export function db(ratio: number): number {
  return 20 * Math.log10(ratio);
}

/** 0 dB is a sine of amplitude 1 (mean square ½). */
export function levelDb(samples: Float32Array): number {
  let sum = 0;
  for (const sample of samples) sum += sample * sample;
  return 10 * Math.log10((2 * sum) / samples.length);
}
