// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import type { Experiment } from '../../../src/notebook/experiment.ts';
import { CircleElement } from '../../../src/ui/analysis/circleElement.ts';
import { EXAMPLE_EVIDENCE, exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';
import { benchInTest } from '../session/benchInTest.ts';

/** θ = 60°, m = 1.5: the loudest place lies tan 17.36° = 0.31 half widths beyond. */
const evidence = {
  ...EXAMPLE_EVIDENCE,
  centre: { timeS: 2, standardUncertaintyHalfWidths: 0.1, shareRe: 0.75, shareIm: 1.299 },
};

async function shown(experiment: Experiment): Promise<ShadowRoot> {
  const session = benchInTest();
  session.change('add mark', ({ id }) => ({ ...experiment, id }));
  const element = new CircleElement();
  element.session = session;
  document.body.append(element);
  await element.updateComplete;
  if (element.shadowRoot === null) throw new Error('nothing was drawn');
  return element.shadowRoot;
}

const textOf = (root: ShadowRoot): string => (root.textContent ?? '').replace(/\s+/g, ' ');

afterEach(() => document.body.replaceChildren());

describe('the circle of a resonance', () => {
  it('is an example, and called one, where no mark has its own', async () => {
    const root = await shown(exampleExperiment([exampleMark('old', { evidence: EXAMPLE_EVIDENCE })]));
    expect(textOf(root)).toContain('An example, not yet yours');
    expect(textOf(root)).toContain('0.31 half widths beside the resonance');
    expect(root.querySelector('select')).toBeNull();
  });

  it('is the newest mark’s own, in millimetres where the tube and the order are known', async () => {
    const experiment = exampleExperiment([exampleMark('a', { evidence, order: 1 })]);
    const root = await shown({ ...experiment, tube: { ...experiment.tube, diameterM: 0.035 } });
    expect(textOf(root)).toContain('This is the circle of Mark 1');
    // 0.31 of 1.35 mm (half of the published formula's width).
    expect(textOf(root)).toContain('0.31 half widths (0.4 mm) beside the resonance');
    expect(textOf(root)).toContain('is too long.');
  });

  it('is chosen among several marks', async () => {
    const other = { ...evidence, centre: { ...evidence.centre, shareIm: -1.299 } };
    const root = await shown(
      exampleExperiment([exampleMark('a', { evidence }), exampleMark('b', { evidence: other })]),
    );
    expect(textOf(root)).toContain('is too short.');
    const select = root.querySelector('select');
    if (select === null) throw new Error('no choice');
    select.value = 'a';
    select.dispatchEvent(new Event('change'));
    await (root.host as CircleElement).updateComplete;
    expect(textOf(root)).toContain('This is the circle of Mark 1');
    expect(textOf(root)).toContain('is too long.');
    expect(textOf(root)).toContain('in millimetres, too, once');
  });
});
