import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { BUDGETS } from './budgets.ts';
import type { Budget } from './budgets.ts';
import { siteBytes } from './siteBytes.ts';
import { benchFrequency } from './speed/frequencyAccuracy.ts';
import { benchRecordings } from './speed/recordings.ts';
import { benchBuiltSignalPath } from './speed/builtSignalPath.ts';
import { benchSolving } from './speed/solving.ts';

/** Builds the site, measures, and ends with status 1 where a budget is overrun. */
const site = mkdtempSync(join(tmpdir(), 'budgets-'));
try {
  await build({ logLevel: 'error', build: { outDir: site, emptyOutDir: true } });
  const bytes = siteBytes(site);
  const signalPath = benchBuiltSignalPath();
  const [live] = signalPath.rows;
  const meyda = signalPath.rows.find(({ name }) => name.startsWith('Meyda'));
  const [ten, thirty] = benchRecordings([10, 30]).rows.map(({ peakMegabytes }) => peakMegabytes);
  const marks = benchSolving().marks.map(({ ms }) => ms);
  const measured: Record<Budget, number> = {
    firstLoadBytes: bytes.firstLoad,
    textsBytes: Math.max(...Object.values(bytes.texts).flatMap(({ first, later }) => [first, later])),
    stripBytes: bytes.strip,
    listeningBytes: bytes.listening,
    answersBytes: bytes.answers,
    viewBytes: bytes.largestView.bytes,
    liveOverMeyda: 1 / (meyda?.timesLivePath ?? NaN),
    liveMsPerS: 1000 / live.realTimeFactor,
    collectorShare: signalPath.collector.share,
    collectorPauseMs: signalPath.collector.longestPauseMs,
    memory30Over10: (thirty ?? NaN) / (ten ?? NaN),
    frequencyTimesBound: Math.max(...benchFrequency().map(({ timesBound }) => timesBound)),
    solver1000Over100: (marks[2] ?? NaN) / (marks[1] ?? NaN),
  };
  for (const [name, value] of Object.entries(measured) as [Budget, number][]) {
    // Written so that "not measured" is overrun, too.
    const isKept = value <= BUDGETS[name];
    const digits = value < 0.1 ? 3 : value < 100 ? 2 : 0;
    console.log(
      `${isKept ? 'kept   ' : 'OVERRUN'}  ${name.padEnd(20)} ${value.toFixed(digits).padStart(9)} of ${BUDGETS[name]}`,
    );
    if (!isKept) process.exitCode = 1;
  }
} finally {
  rmSync(site, { recursive: true });
}
