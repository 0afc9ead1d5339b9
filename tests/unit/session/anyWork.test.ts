import fc from 'fast-check';
import { describe, it } from 'vitest';
import { BenchTabs } from './anyWork/benchTabs.ts';
import { expectExports } from './anyWork/exports.ts';
import { anyCommand } from './anyWork/commands.ts';

describe('whatever is done, in whatever order', () => {
  it('nothing that was typed is lost, each step goes back and forth, and “Saved” is true', async () => {
    await fc.assert(
      fc.asyncProperty(fc.commands([anyCommand], { maxCommands: 40, size: 'max' }), async (commands) => {
        const tabs = new BenchTabs(true);
        await tabs.open(0);
        await fc.asyncModelRun(() => ({ model: tabs, real: tabs }), commands);
        for (const tab of tabs.tabs) if (tab !== null) await expectExports(tab.bench.experiment);
      }),
      { numRuns: 100 },
    );
  }, 120_000);
});
