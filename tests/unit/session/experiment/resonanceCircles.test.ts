import { describe, expect, it } from 'vitest';
import { resonanceCircles } from '../../../../src/session/experiment/resonanceCircles.ts';
import { EXAMPLE_EVIDENCE, exampleExperiment, exampleMark } from '../../notebook/exampleExperiment.ts';

const centre = { timeS: 2, standardUncertaintyHalfWidths: 0.1, shareRe: 0.75, shareIm: 1.3 };
const evidence = { ...EXAMPLE_EVIDENCE, centre };
const experiment = exampleExperiment([
  exampleMark('without', { evidence: EXAMPLE_EVIDENCE }),
  exampleMark('by hand'),
  exampleMark('first', { evidence, order: 1 }),
  exampleMark('third', { evidence, order: 3 }),
  exampleMark('any', { evidence }),
  exampleMark('elsewhere', { evidence, placeId: 'place-2' }),
]);

describe('resonanceCircles', () => {
  it('are those of the present place’s marks that have a centre', () => {
    const circles = resonanceCircles(experiment, null);
    expect(circles.map(({ key }) => key)).toEqual(['first', 'third', 'any']);
    expect(circles[0].share).toEqual({ re: 0.75, im: 1.3 });
  });

  it('are one for a mark and its repeats, and none of a mark that was left out', () => {
    const again = { ...evidence, centre: { ...centre, shareRe: 0.9 } };
    const circles = resonanceCircles(
      exampleExperiment([
        exampleMark('a', { evidence }),
        exampleMark('out', { evidence, excluded: true }),
        exampleMark('a again', { evidence: again, repeatOf: 'a' }),
      ]),
      null,
    );
    expect(circles).toMatchObject([{ key: 'a', share: { re: 0.9, im: 1.3 } }]);
  });

  // Half widths of a closed tube of 35 mm at 512 Hz by walls and radiation (an independent computation after Fletcher &
  // Rossing 1998, ch. 8, rounded to 0.1 mm): 1.4 mm at the first resonance, 4.1 mm at the third.
  it('have a half width where fork, ends, tube and order are known', () => {
    const tubed = { ...experiment, tube: { ...experiment.tube, diameterM: 0.035 } };
    const widths = resonanceCircles(tubed, null).map(({ halfWidthM }) => halfWidthM);
    expect(Math.abs((widths[0] ?? NaN) - 0.0014)).toBeLessThan(1e-4);
    expect(Math.abs((widths[1] ?? NaN) - 0.0041)).toBeLessThan(1e-4);
    expect(widths[2]).toBeNull();
    expect(resonanceCircles(experiment, null).map(({ halfWidthM }) => halfWidthM)).toEqual([
      null,
      null,
      null,
    ]);
  });

  it('have none where no theory reaches the tube', () => {
    const wide = {
      ...experiment,
      tube: { ...experiment.tube, diameterM: 0.3 },
      forks: experiment.forks.map((fork) => ({ ...fork, nominalHz: 2000 })),
    };
    expect(resonanceCircles(wide, null)[0].halfWidthM).toBeNull();
  });
});
