// @vitest-environment happy-dom
import { html } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { readFileSync, readdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Session } from '../../../src/session/session.ts';
import { PartElement } from '../../../src/ui/parts/partElement.ts';
import { partName } from '../../../src/words/page/partNames.ts';
import { SessionWatch } from '../../../src/ui/sessionWatch.ts';
import { benchInTest } from '../session/benchInTest.ts';

/** A part that can be told to throw at each place where Lit calls it. */
class TestPart extends PartElement {
  session!: Session;
  breaks: 'render' | 'item' | 'willUpdate' | 'updated' | 'react' | null = null;
  protected readonly watch = new SessionWatch(this, ['notebook'], () => {
    this.broken('react');
    this.requestUpdate();
  });

  private broken(where: string): void {
    if (this.breaks === where) throw new RangeError('stampedHz must be 100..2100, got 4096');
  }

  override willUpdate(): void {
    this.broken('willUpdate');
  }

  override updated(): void {
    this.broken('updated');
  }

  override render() {
    this.broken('render');
    const items = [1, 2, this.session.experiment.marks.length];
    return html`<p>${items.length} things</p>
      <ul>
        ${repeat(items, (item, index) => {
          if (index === 1) this.broken('item');
          return html`<li>${item}</li>`;
        })}
      </ul>`;
  }
}
customElements.define('test-part', TestPart);

const errors = vi.spyOn(console, 'error');

beforeEach(() => {
  errors.mockReset().mockImplementation(() => undefined);
});

afterEach(() => {
  document.body.replaceChildren();
});

function partsOf(session: Session, count: number): TestPart[] {
  return Array.from({ length: count }, () => {
    const part = new TestPart();
    part.session = session;
    document.body.append(part);
    return part;
  });
}

const textOf = (part: TestPart): string => part.renderRoot.textContent.replace(/\s+/g, ' ').trim();
const button = (part: TestPart, name: string): HTMLButtonElement => {
  const found = [...part.renderRoot.querySelectorAll('button')].find((one) => one.textContent === name);
  if (found === undefined) throw new Error(`no button ${name} in “${textOf(part)}”`);
  return found;
};

describe('a part of the page that throws', () => {
  for (const breaks of ['render', 'item', 'willUpdate', 'updated', 'react'] as const) {
    it(`in ${breaks}: says so in its own place, leaves the others working, and comes back`, async () => {
      const session = benchInTest();
      const [bad, good] = partsOf(session, 2) as [TestPart, TestPart];
      await Promise.all([bad.updateComplete, good.updateComplete]);
      bad.breaks = breaks;
      session.addMarkByHand(0.2);
      await Promise.all([bad.updateComplete, good.updateComplete]);
      expect(textOf(bad)).toContain('This part of the page has failed');
      await vi.waitFor(() =>
        expect(textOf(bad)).toContain('has failed: test-part. Everything else still works.'),
      );
      expect(textOf(bad)).not.toContain('3 things');
      // What a person can't use stays out of the message.
      expect(textOf(bad)).not.toContain('stampedHz');
      expect(textOf(good)).toMatch(/^3 things/);
      bad.breaks = null;
      button(bad, 'Try again').click();
      await bad.updateComplete;
      expect(textOf(bad)).toMatch(/^3 things/);
      session.addMarkByHand(0.3);
      await bad.updateComplete;
      expect(bad.renderRoot.querySelector('li:last-child')?.textContent).toBe('2');
    });
  }

  it('at first sight, too, and is drawn by the next change that lets it', async () => {
    const session = benchInTest();
    const part = new TestPart();
    part.session = session;
    part.breaks = 'render';
    document.body.append(part);
    await part.updateComplete;
    expect(textOf(part)).toContain('has failed');
    part.breaks = null;
    session.addMarkByHand(0.2);
    await part.updateComplete;
    expect(textOf(part)).toMatch(/^3 things/);
  });

  it('with every picture is reported once to whoever looks into it', async () => {
    const session = benchInTest();
    const [part] = partsOf(session, 1) as [TestPart];
    part.breaks = 'render';
    for (const lengthM of [0.1, 0.2, 0.3]) {
      session.addMarkByHand(lengthM);
      await part.updateComplete;
    }
    expect(errors).toHaveBeenCalledTimes(1);
    expect(String(errors.mock.calls[0]?.[1])).toContain('stampedHz');
  });

  it('asks the page to undo the step and to save the file', async () => {
    const asked: string[] = [];
    for (const name of ['step-undo', 'experiment-save']) {
      document.body.addEventListener(name, () => asked.push(name), { once: true });
    }
    const [part] = partsOf(benchInTest(), 1) as [TestPart];
    part.breaks = 'render';
    part.requestUpdate();
    await part.updateComplete;
    button(part, 'Undo the last step').click();
    button(part, 'Save the experiment’s file').click();
    expect(asked).toEqual(['step-undo', 'experiment-save']);
  });
});

describe('the elements of the page', () => {
  const folder = resolve(import.meta.dirname, '../../../src/ui');
  const sources = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts') && !path.endsWith('partElement.ts'))
    .map((path) => readFileSync(join(folder, path), 'utf8'));

  it('are all such parts', () => {
    expect(sources.filter((source) => source.includes('extends PartElement')).length).toBeGreaterThan(50);
    expect(sources.filter((source) => source.includes('extends LitElement'))).toEqual([]);
  });

  it('all have a name that a person knows', () => {
    const tags = sources.flatMap((source) =>
      [...source.matchAll(/@customElement\('([\w-]+)'\)/g)].map(([, tag]) => tag ?? ''),
    );
    expect(tags.length).toBeGreaterThan(50);
    expect(tags.filter((tag) => partName(tag) === tag)).toEqual([]);
  });
});
