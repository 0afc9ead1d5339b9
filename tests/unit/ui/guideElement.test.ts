// @vitest-environment happy-dom
import { afterEach, describe, expect, it, vi } from 'vitest';
import { PracticeRun } from '../../../src/session/hearing/practiceRun.ts';
import { GuideElement } from '../../../src/ui/stage/guideElement.ts';
import { EXAMPLE_EVIDENCE, exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';
import { benchInTest } from '../session/benchInTest.ts';

afterEach(() => document.body.replaceChildren());

describe('the truth of the practice column', () => {
  it('says to a perfect reader of the loudest places that they were read well, and why they aren’t the resonances', async () => {
    const practice = new PracticeRun(exampleExperiment(), 1);
    const [, second, third] = practice.resonances;
    const session = benchInTest();
    const marks = [second, third].map(({ loudestM }, i) =>
      exampleMark(`m${i}`, { lengthM: loudestM, evidence: EXAMPLE_EVIDENCE }),
    );
    session.change('add mark', ({ id }) => ({ ...exampleExperiment(marks), id }));
    const element = new GuideElement();
    Object.assign(element, { session, practice });
    document.body.append(element);
    await element.updateComplete;
    element.shadowRoot?.querySelector('button')?.click();
    const truth = await vi.waitFor(() => {
      const shown = element.shadowRoot?.querySelector('bench-truth')?.shadowRoot ?? null;
      if (shown === null || shown.querySelector('li') === null) throw new Error('not there yet');
      return shown;
    });
    const items = [...truth.querySelectorAll('li')].map((item) => item.textContent ?? '');
    expect(items).toHaveLength(2);
    for (const [i, item] of items.entries()) {
      expect(item).toContain(`Mark ${i + 1}: you typed`);
      expect(item).toContain('Read well, at the loudest place');
    }
    expect(truth.textContent).toContain('The loudest place is not quite at the resonance');
  });
});
