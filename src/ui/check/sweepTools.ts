/*
 * What a sweep needs beside its card. It comes with the first sweep: most people never make one.
 */
export { SweepRun, speedFromSweep } from '../../session/hearing/sweepRun.ts';
export { sweepSource } from './sweepSource.ts';
