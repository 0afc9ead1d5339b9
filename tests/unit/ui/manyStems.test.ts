// @vitest-environment happy-dom
import { render } from 'lit';
import { describe, expect, it } from 'vitest';
import { solveExperiment } from '../../../src/session/experiment/solveExperiment.ts';
import { columnGeometry } from '../../../src/ui/stage/columnGeometry.ts';
import { stemsOf } from '../../../src/ui/stage/columnScene.ts';
import { columnWords } from '../../../src/words/page/columnPicture.ts';
import { stemsArt } from '../../../src/ui/stage/stemArt.ts';
import { largeExperiment } from '../../support/largeExperiment.ts';

const geometry = columnGeometry(900, 1.2);
const stemsIn = (marks: number) => {
  const experiment = largeExperiment({ marks, places: 1, forks: 1, seed: 1, blunders: 0.01 });
  return { experiment, stems: stemsOf(experiment, solveExperiment(experiment)) };
};

function drawn(marks: number): NodeListOf<Element> {
  const place = document.createElement('div');
  render(stemsArt(geometry, stemsIn(marks).stems), place);
  return place.querySelectorAll('g');
}

describe('marks on the rule', () => {
  it('are each drawn as long as there is room for them', () => {
    expect(drawn(300)).toHaveLength(300);
  });

  it('of thousands stand once a pixel, outliers before others', () => {
    const { stems } = stemsIn(2000);
    const found = [...drawn(2000)];
    expect(found.length).toBeGreaterThan(5);
    expect(found.length).toBeLessThan(200);
    const outliers = stems.filter((stem) => stem.isOutlier);
    expect(outliers.length).toBeGreaterThan(5);
    const pixels = new Set(outliers.map((stem) => Math.round(geometry.pxPerM * stem.lengthM)));
    const shown = found.filter((stem) => stem.classList.contains('outlier'));
    expect(shown.length).toBeGreaterThanOrEqual(pixels.size - 1);
  });

  it('are named in words up to a number, the rest counted', () => {
    const { experiment, stems } = stemsIn(400);
    const words = columnWords(experiment, 0.3, stems);
    expect(words.match(/ cm/g)?.length).toBe(31);
    expect(words).toContain('and 370 more.');
    expect(columnWords(experiment, 0.3, stems.slice(0, 2))).not.toContain('more');
  });
});
