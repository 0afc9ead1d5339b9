import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';

/**
 * How long the page takes to show a flag once it has the sound that decides it: everything beyond the detector's own
 * delay, which is counted in samples and is the same on any machine.
 *
 * Method: a module that only the bench loads into the audio thread notes the time at which each batch of samples
 * leaves that thread, which is when its last sample has come in. In the page the last batch that arrived is noted,
 * and a MutationObserver waits for the flash. Flagging happens within the handling of the batch that completes the
 * decision, and the flash is in the DOM at the end of the same task, so that the batch noted last is the one that
 * decided. `domMs` ends there. `paintedMs` ends after the next picture of the screen was made (animation frame and the
 * task after it); what screen and compositor add isn't seen from a page. Both clocks are `Date.now()` of one machine,
 * whole milliseconds. Not included: the device's and the browser's way to the audio thread, and the time that the
 * deciding sample waits for its batch to fill, which is `batchMs` at most and half of that on average.
 */
export interface FlagDelay {
  readonly domMs: number;
  readonly paintedMs: number;
  readonly batchMs: number;
}

const STAMP_FILE = 'bench-stamp.js';

const STAMP = `
const post = MessagePort.prototype.postMessage;
MessagePort.prototype.postMessage = function (message, transfer) {
  if (message.kind === 'batch') message.leftAtMs = Date.now();
  return post.call(this, message, transfer);
};
`;

/** Runs in the page before its own scripts. */
export const WATCH_FOR_FLASH = `(() => {
  // An empty page has no audio thread; this runs there, too.
  if (typeof AudioWorklet === 'undefined') return;
  window.flagDelays = [];
  let batch = null;
  const addModule = AudioWorklet.prototype.addModule;
  AudioWorklet.prototype.addModule = async function (url, options) {
    await addModule.call(this, new URL('${STAMP_FILE}', document.baseURI).href);
    return addModule.call(this, url, options);
  };
  window.AudioWorkletNode = class extends AudioWorkletNode {
    constructor(context, name, options) {
      super(context, name, options);
      this.port.addEventListener('message', ({ data }) => {
        if (data.kind === 'batch')
          batch = { leftAtMs: data.leftAtMs, batchMs: (1000 * data.frames) / context.sampleRate };
      });
    }
  };
  const isFlash = (change) =>
    change.target.classList.contains('flash') && !(change.oldValue ?? '').split(' ').includes('flash');
  const watch = () => {
    const stage = document.querySelector('bench-app')?.shadowRoot?.querySelector('bench-stage')?.shadowRoot;
    if (!stage) return requestAnimationFrame(watch);
    new MutationObserver((changes) => {
      if (batch === null || !changes.some(isFlash)) return;
      const { leftAtMs, batchMs } = batch;
      const domMs = Date.now() - leftAtMs;
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => window.flagDelays.push({ domMs, paintedMs: Date.now() - leftAtMs, batchMs });
        port2.postMessage(null);
      });
    }).observe(stage, { subtree: true, attributes: true, attributeFilter: ['class'], attributeOldValue: true });
  };
  requestAnimationFrame(watch);
})();`;

/** Puts the audio thread's module beside the built page. */
export function addStampTo(siteFolder: string): void {
  writeFileSync(join(siteFolder, STAMP_FILE), STAMP);
}

/** What was seen so far. */
export function flagDelays(page: Page): Promise<readonly FlagDelay[]> {
  return page.evaluate(() => (window as unknown as { flagDelays: FlagDelay[] }).flagDelays);
}
