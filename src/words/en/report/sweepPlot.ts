import { fixed } from '../../numbers.ts';

export const sweepPlot = {
  title: 'Level against the pitch of the tone',
  x: 'pitch of the played tone, Hz',
  y: 'level, dB (0 dB: a sine of amplitude 1)',
  label: (frequencyHz: number) => fixed(frequencyHz, 1),
  shows: (resonancesHz: readonly number[]) =>
    resonancesHz.length === 0
      ? 'No resonance was heard on both ways.'
      : `Resonances heard both on the way up (solid) and back (dashed): ${resonancesHz.map((hz) => `${fixed(hz, 1)} Hz`).join(', ')}.`,
};
