import type { LaterWords } from '../catalogue.ts';

export const practiceTruth: LaterWords['practiceTruth'] = {
  speed: (mps) => `A velocidade verdadeira é ${mps}\u00a0m/s.`,
  covered: (off, percent) =>
    `Seu resultado difere dela em ${off}\u00a0m/s (${percent}\u00a0%): a incerteza cobre essa diferença.`,
  notCovered: (off, percent) =>
    `Seu resultado difere dela em ${off}\u00a0m/s (${percent}\u00a0%): mais do que diz a incerteza.`,
  fork: (hertz) => `A frequência verdadeira do diapasão é ${hertz}\u00a0Hz.`,
  whyLoudest:
    'A posição mais sonora não fica exatamente na ressonância: o microfone ouve também o próprio diapasão, e diapasão e coluna juntos soam mais forte um pouco ao lado dela.',
};

export const practiceReading: LaterWords['practiceReading'] = {
  typed: (mark, centimetres) => `${mark}: você digitou ${centimetres}\u00a0cm.`,
  loudestLonger: (resonance, loudest, apartMm) =>
    `A coluna ressoa em ${resonance}\u00a0cm e soa mais forte em ${loudest}\u00a0cm, ${apartMm}\u00a0mm mais longa.`,
  loudestShorter: (resonance, loudest, apartMm) =>
    `A coluna ressoa em ${resonance}\u00a0cm e soa mais forte em ${loudest}\u00a0cm, ${apartMm}\u00a0mm mais curta.`,
  atResonance: 'Boa leitura, na ressonância.',
  atLoudest: 'Boa leitura, na posição mais sonora.',
  between: 'Boa leitura, entre as duas.',
  tooLong: (millimetres) => `Seu comprimento tem ${millimetres}\u00a0mm a mais que o da ressonância.`,
  tooShort: (millimetres) => `Seu comprimento tem ${millimetres}\u00a0mm a menos que o da ressonância.`,
};
