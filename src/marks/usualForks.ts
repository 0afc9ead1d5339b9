/**
 * Forks of a school's sets, Hz: the physics set (references of the tests, 256 to 512 and its octave) and the common notes
 * between. Common practice, no source.
 */
export const SCHOOL_FORKS_HZ: readonly number[] = [
  256, 261.6, 288, 320, 329.6, 341.3, 384, 392, 426.7, 440, 480, 493.9, 512, 523.3, 1024,
];
