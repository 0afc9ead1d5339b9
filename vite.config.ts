import { defineConfig } from 'vitest/config';
import { browserFloorPlugin, buildTarget } from './build/browserFloor.ts';
import { plainStylesPlugin } from './build/plainStyles.ts';
import { SERVICE_WORKER, siteFiles } from './build/siteFiles.ts';
import { chunkFileName } from './build/textChunks.ts';

export default defineConfig({
  // Relative addresses, so that the built folder works at any path of any static host.
  base: './',
  build: {
    target: buildTarget(),
    sourcemap: true,
    rolldownOptions: {
      input: { main: 'index.html', worker: 'src/offline/worker/serviceWorker.ts' },
      output: {
        chunkFileNames: chunkFileName,
        entryFileNames: (chunk) => (chunk.name === 'worker' ? SERVICE_WORKER : 'assets/[name]-[hash].js'),
      },
    },
  },
  plugins: [plainStylesPlugin(), siteFiles(), browserFloorPlugin()],
  worker: { format: 'es' },
  test: {
    reporters: ['default', './tests/countReporter.ts'],
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['tests/unit/**/*.test.ts'],
          // What needs a page's objects says so in its first line: `// @vitest-environment happy-dom`.
          environment: 'node',
          // One process for many files, as a page goes through many listenings: nothing is loaded and compiled twice.
          // Processes, not threads: what a job costs is measured by its process.
          pool: 'forks',
          isolate: false,
          // All cores, where one fewer is usual: on two cores that halves the time. Before the pages, which need quiet.
          maxWorkers: '100%',
          sequence: { groupOrder: 0 },
          // A busy machine takes its time; what never comes still fails.
          testTimeout: 60_000,
          setupFiles: [
            'tests/support/guardTests.ts',
            'tests/unit/seededProperties.ts',
            'tests/support/inEnglish.ts',
          ],
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts', 'tests/engines/**/*.test.ts'],
          environment: 'node',
          setupFiles: ['tests/support/guardTests.ts', 'tests/support/inEnglish.ts'],
          globalSetup: ['tests/browser/globalSetup.ts'],
          testTimeout: 120_000,
          // A busy machine takes its time; what never comes still fails.
          expect: { poll: { timeout: 10_000 } },
          hookTimeout: 120_000,
          // Each page plays its sound in real time; two at once would share the two cores of a small machine.
          fileParallelism: false,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
