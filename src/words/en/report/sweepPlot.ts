export const sweepPlot = {
  title: 'Level against the frequency of the tone',
  x: 'frequency of the played tone, Hz',
  y: 'level, dB (0 dB: a sine of amplitude 1)',
  none: 'No resonance was heard both on the way up and on the way down.',
  frequency: (hertz: string) => `${hertz} Hz`,
  resonances: (list: string) =>
    `Resonances heard both on the way up (solid) and on the way down (dashed): ${list}.`,
};
