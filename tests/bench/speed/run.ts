import { cpus } from 'node:os';
import { parseArgs } from 'node:util';
import { benchBuiltSignalPath } from './builtSignalPath.ts';
import { benchCores } from './cores.ts';
import { benchFrequency } from './frequencyAccuracy.ts';
import { benchRecordings } from './recordings.ts';
import { benchSolving } from './solving.ts';

/** What the bench costs, beside what one would use otherwise: everything measured in this one run. */
const { values: args } = parseArgs({
  options: {
    json: { type: 'boolean', default: false },
    /** Also an hour of sound, in one file and in 60. */
    hour: { type: 'boolean', default: false },
  },
});

const machine = `${cpus().length} cores, Node ${process.versions.node}, V8 ${process.versions.v8}`;
const signalPath = benchBuiltSignalPath();
const frequency = benchFrequency();
const solving = benchSolving();
const recordings = benchRecordings(args.hour ? [1, 10, 60] : [1, 10]);
const cores = args.hour ? await benchCores(60, 3) : await benchCores(8, 1);

if (args.json) {
  console.log(JSON.stringify({ machine, signalPath, frequency, solving, recordings, cores }));
} else {
  console.log(machine);
  console.log('\nSignal path, 48 kHz, one core');
  for (const { name, realTimeFactor, timesLivePath } of signalPath.rows) {
    console.log(
      `  ${name.padEnd(38)} ${realTimeFactor.toFixed(0).padStart(6)} × real time, ${timesLivePath.toFixed(2)} of the live path's time`,
    );
  }
  const { collector } = signalPath;
  console.log(
    `  collector on the live path: ${(100 * collector.share).toFixed(1)} % of its time, longest pause ${collector.longestPauseMs.toFixed(1)} ms`,
  );
  console.log('\nFork frequency, 2 s of a dying tone, signal-to-noise in 44 Hz');
  for (const row of frequency) {
    console.log(
      `  ${String(row.signalToNoiseDb).padStart(3)} dB: bound ${row.boundMilliHz.toFixed(2)} mHz, rms error ${row.timesBound.toFixed(2)} of it; median error ${row.ownMilliHz.toFixed(2)} mHz, McLeod ${row.mcLeodMilliHz.toFixed(0)} mHz, spectrum's peak ${row.peakMilliHz.toFixed(1)} mHz`,
    );
  }
  console.log('\nSolver');
  for (const { count, ms } of solving.marks)
    console.log(`  ${String(count).padStart(5)} marks: ${ms.toFixed(1)} ms`);
  console.log(`  growth: time ∝ marks^${solving.marksExponent.toFixed(2)}`);
  for (const { count, ms } of solving.groups)
    console.log(`  class of ${String(count).padStart(5)} groups: ${ms.toFixed(1)} ms`);
  console.log(`  growth: time ∝ groups^${solving.groupsExponent.toFixed(2)}`);
  console.log('\nanalyse, each in a process of its own');
  for (const { minutes, seconds, peakMegabytes } of recordings.rows) {
    console.log(
      `  ${String(minutes).padStart(3)} min: ${seconds.toFixed(1)} s, peak ${peakMegabytes.toFixed(0)} MB`,
    );
  }
  console.log(`  growth: time ∝ length^${recordings.exponent.toFixed(2)}`);
  const sameness = cores.isSameOutput ? 'the same output' : 'NOT THE SAME OUTPUT';
  const share = (seconds: number): string =>
    `${seconds.toFixed(1)} s, ${(seconds / cores.oneS).toFixed(2)} of the time`;
  console.log(`  ${cores.files} files of a minute on one core: ${cores.oneS.toFixed(1)} s`);
  console.log(`    on ${cores.cores}: ${share(cores.allS)}, ${sameness}`);
  console.log(`    by ${cores.cores} processes, each with its share: ${share(cores.apartS)}`);
}
