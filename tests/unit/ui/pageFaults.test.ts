// @vitest-environment happy-dom
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { PageFaults } from '../../../src/ui/pageFaults.ts';
import { words } from '../../../src/words/inUse.ts';

const told: string[] = [];
let controller: ReactiveController;

beforeEach(() => {
  told.length = 0;
  const host = { addController: (one: ReactiveController) => (controller = one) };
  new PageFaults(host as unknown as ReactiveControllerHost, (message) => told.push(message));
  controller.hostConnected?.();
});

afterEach(() => {
  controller.hostDisconnected?.();
  vi.restoreAllMocks();
});

function thrown(error: unknown): void {
  dispatchEvent(new ErrorEvent('error', { error, message: String(error) }));
}

function rejected(reason: unknown): void {
  dispatchEvent(Object.assign(new Event('unhandledrejection'), { reason }));
}

describe('a fault that nothing else has caught', () => {
  it('is told in words that hold nothing of the error’s own', () => {
    thrown(new RangeError('stampedHz must be 100..2100, got 4096'));
    rejected(new Error('lost'));
    expect(told).toEqual([words.pageFault.action, words.pageFault.action]);
  });

  it('that comes with every block of sound is told once, and again after ten quiet seconds', () => {
    const clock = vi.spyOn(performance, 'now');
    for (let ms = 0; ms < 20_000; ms += 50) {
      clock.mockReturnValue(1000 + ms);
      thrown(new Error('the same'));
    }
    expect(told.length).toBe(1);
    clock.mockReturnValue(40_000);
    thrown(new Error('the same'));
    expect(told.length).toBe(2);
  });

  it('is told as a view that didn’t load where a script of the site is missing', () => {
    // What Chromium, Firefox and Safari say; of the last two from memory.
    for (const words of [
      'Failed to fetch dynamically imported module: https://a.example/assets/recordsElement-1.js',
      'error loading dynamically imported module: https://a.example/assets/recordsElement-1.js',
      'Importing a module script failed.',
    ]) {
      rejected(new TypeError(words));
    }
    expect(told).toEqual([words.pageFault.view, words.pageFault.view, words.pageFault.view]);
  });

  it('is none where the browser only remarks something, without an error', () => {
    dispatchEvent(new ErrorEvent('error', { message: 'ResizeObserver loop completed' }));
    expect(told).toEqual([]);
  });
});
