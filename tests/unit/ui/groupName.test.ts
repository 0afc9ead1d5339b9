// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import { newExperiment } from '../../../src/notebook/newExperiment.ts';
import { lessonExperiment, planOf } from '../../../src/notebook/lessonLink.ts';
import { reportTitle } from '../../../src/report/labReport/labReportFile.ts';
import { fileStem } from '../../../src/report/experimentJson.ts';
import { GroupNameElement } from '../../../src/ui/stage/groupNameElement.ts';
import { titleWords } from '../../../src/words/titles.ts';
import { benchInTest } from '../session/benchInTest.ts';

afterEach(() => document.body.replaceChildren());

async function asked(isLesson: boolean) {
  const session = benchInTest();
  if (isLesson) {
    const lesson = { task: '', hideExpected: false, hideTheory: false, hideTruth: false };
    const made = lessonExperiment(planOf(newExperiment('', ''), lesson), 'lesson', '2030-03-01T10:00:00Z');
    await session.experiments.open(made, 'open lesson');
  }
  const part = Object.assign(new GroupNameElement(), { session });
  document.body.append(part);
  await part.updateComplete;
  const field = () => part.renderRoot.querySelector('input');
  const press = async (text: string): Promise<void> => {
    const all = [...part.renderRoot.querySelectorAll('button')];
    all.find((button) => button.textContent.trim() === text)?.click();
    await part.updateComplete;
  };
  const type = async (text: string): Promise<void> => {
    const input = field();
    if (input === null) throw new Error('no field');
    input.value = text;
    input.dispatchEvent(new Event('input'));
    await part.updateComplete;
  };
  return { session, part, field, press, type };
}

describe('a lesson’s group', () => {
  it('is asked for its name, which title, file and report then bear', async () => {
    const { session, part, field, type } = await asked(true);
    await type('  Table 7 ');
    // Half a name is none yet, and the field stays while it is typed.
    expect(session.experiment.group).toBe('');
    part.renderRoot.querySelector('form')?.dispatchEvent(new Event('submit', { cancelable: true }));
    await part.updateComplete;
    expect(field()).toBeNull();
    const { experiment } = session;
    expect(experiment.group).toBe('Table 7');
    expect(titleWords(experiment)).toBe('Table 7');
    expect(fileStem(experiment)).toMatch(/^Table-7/);
    expect(reportTitle(experiment)).toContain('Table 7');
    session.undo();
    await part.updateComplete;
    expect(field()).not.toBeNull();
  });

  it('hands the focus on when the question goes, and only if it had it', async () => {
    for (const hasFocus of [true, false]) {
      const { part, field, type } = await asked(true);
      let handed = 0;
      part.addEventListener('group-answered', () => (handed += 1));
      await type('Table 7');
      if (hasFocus) field()?.focus();
      else field()?.blur();
      expect(handed).toBe(0);
      part.renderRoot.querySelector('form')?.dispatchEvent(new Event('submit', { cancelable: true }));
      await part.updateComplete;
      expect(field()).toBeNull();
      expect(handed).toBe(hasFocus ? 1 : 0);
      part.remove();
    }
  });

  it('is not named by nothing, and may put the answer off', async () => {
    const { session, part, field, press, type } = await asked(true);
    await type('   ');
    part.renderRoot.querySelector('form')?.dispatchEvent(new Event('submit', { cancelable: true }));
    await part.updateComplete;
    expect(session.experiment.group).toBe('');
    expect(field()).not.toBeNull();
    await press('Later');
    expect(field()).toBeNull();
    expect(session.experiment.group).toBe('');
  });

  it('is not asked where there is no lesson', async () => {
    expect((await asked(false)).field()).toBeNull();
  });
});
