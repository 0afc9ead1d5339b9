// @vitest-environment happy-dom
import type { ReactiveController } from 'lit';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { WidthWatch } from '../../../src/ui/parts/widthWatch.ts';

afterEach(() => vi.unstubAllGlobals());

/** An element with a watch, and what the browser does: hands sizes out, and draws frames. */
function watched() {
  const observed = new Set<Element>();
  let hand: (entries: readonly { contentRect: { width: number } }[]) => void = () => undefined;
  const frames = new Map<number, () => void>();
  vi.stubGlobal(
    'ResizeObserver',
    class {
      constructor(callback: typeof hand) {
        hand = callback;
      }
      observe = (element: Element) => observed.add(element);
      disconnect = () => observed.clear();
    },
  );
  vi.stubGlobal('requestAnimationFrame', (callback: () => void) => {
    frames.set(frames.size + 1, callback);
    return frames.size;
  });
  vi.stubGlobal('cancelAnimationFrame', (id: number) => frames.delete(id));
  const controllers: ReactiveController[] = [];
  const host = Object.assign(document.createElement('div'), {
    addController: (one: ReactiveController) => void controllers.push(one),
    removeController: () => undefined,
    requestUpdate: () => undefined,
    updateComplete: Promise.resolve(true),
  });
  const widths: number[] = [];
  const watch = new WidthWatch(host, (widthPx) => widths.push(widthPx));
  const size = (width: number) => hand([{ contentRect: { width } }]);
  const frame = () => {
    const due = [...frames.values()];
    frames.clear();
    for (const callback of due) callback();
  };
  return { watch, host, observed, controllers, widths, size, frame };
}

describe('the width of an element', () => {
  it('is told with the next frame, never while sizes are handed out, and only the last one', () => {
    const { watch, host, observed, controllers, widths, size, frame } = watched();
    expect(controllers).toEqual([watch]);
    watch.hostConnected();
    expect([...observed]).toEqual([host]);
    size(900);
    size(640);
    expect(widths).toEqual([]);
    frame();
    expect(widths).toEqual([640]);
  });

  it('is told no more once the element is gone', () => {
    const { watch, observed, widths, size, frame } = watched();
    watch.hostConnected();
    size(900);
    watch.hostDisconnected();
    frame();
    expect(widths).toEqual([]);
    expect(observed.size).toBe(0);
  });
});
