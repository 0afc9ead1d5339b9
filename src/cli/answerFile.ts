import { open } from 'node:fs/promises';
import { WavError, WavReader } from '../capture/wav.ts';
import { RecordingAnalysis } from '../session/recording/analyseRecording.ts';
import type { CheckedReport, FollowedTube } from '../session/recording/analyseRecording.ts';
import { analysisLine, analysisTable } from './analysisText.ts';
import { whyNotHeard } from '../session/hearing/whyNotHeard.ts';
import { inFull } from '../words/faultWords.ts';
import { unheardPitchWords } from '../words/listening.ts';
import { recordingFaultWords } from '../words/recordingFaults.ts';
import { locate } from './locate.ts';
import { speakEnglish } from '../words/english.ts';

speakEnglish();

/** What is asked of each file. */
export interface AnalysisOrder {
  readonly forkHz: number;
  readonly toleranceHz: number;
  readonly live: boolean;
  readonly check: boolean;
  readonly follow?: { readonly tube: FollowedTube | null };
  readonly json: boolean;
}

/** What is printed for one file. */
export interface FileAnswer {
  /** For standard output, lines complete. */
  readonly output: string;
  /** For standard error, lines complete; null where the file could be used. */
  readonly error: string | null;
}

/** Sound between two collections of garbage, s. */
const COLLECT_S = 300;

/** Left alone, the engine lets some 20 MB lie of what is used no more. Does nothing where Node doesn't offer it. */
const collectGarbage = (): void => (globalThis as { gc?: () => void }).gc?.();

/** Analyses one file; never throws. Also what a worker thread runs. */
export default async function answerFile({
  file,
  order,
}: {
  readonly file: string;
  readonly order: AnalysisOrder;
}): Promise<FileAnswer> {
  try {
    const report = await analyseFile(file, order);
    const output = order.json ? `${analysisLine(file, report)}\n` : analysisTable(file, report);
    return { output, error: null };
  } catch (thrown) {
    const error = errorWords(thrown);
    return {
      output: order.json ? `${JSON.stringify({ file, error })}\n` : `${file}\n  can’t be used\n\n`,
      error: `${file}: ${error}\n`,
    };
  }
}

function errorWords(thrown: unknown): string {
  if (thrown instanceof WavError) return inFull(recordingFaultWords(thrown.fault));
  return thrown instanceof Error ? thrown.message : String(thrown);
}

async function analyseFile(file: string, order: AnalysisOrder): Promise<CheckedReport> {
  const handle = await open(locate(file)).catch((error: unknown) => {
    const code = (error as { code?: string }).code;
    throw new Error(
      code === 'ENOENT' ? 'there is no such file.' : `the file can’t be opened (${code ?? 'unknown'}).`,
    );
  });
  try {
    const stats = await handle.stat();
    if (stats.isDirectory()) throw new Error('this is a folder, not a recording.');
    // One room for all pieces of the file: what is read of one is used before the next.
    let bytes = new Uint8Array(1 << 16);
    const reader = await WavReader.open(async (offset, length) => {
      if (bytes.length < length) bytes = new Uint8Array(length);
      const { bytesRead } = await handle.read(bytes, 0, length, offset);
      return bytes.subarray(0, bytesRead);
    }, stats.size);
    const { sampleRateHz } = reader.format;
    const unfit = whyNotHeard(sampleRateHz, order.forkHz);
    if (unfit !== null) throw new Error(inFull(unheardPitchWords(unfit)));
    const analysis = new RecordingAnalysis({
      sampleRateHz,
      fork: { nominalHz: order.forkHz, toleranceHz: order.toleranceHz },
      live: order.live,
      check: order.check,
      ...(order.follow === undefined ? {} : { follow: order.follow }),
    });
    let collectedFrame = 0;
    for await (const block of reader.blocks(4096, false)) {
      analysis.push(block);
      if (block.startFrame - collectedFrame < COLLECT_S * sampleRateHz) continue;
      collectGarbage();
      collectedFrame = block.startFrame;
    }
    const remarks = (await reader.remarks()).map((remark) => ({ ...remark, timeS: null }));
    const report = analysis.finish();
    return { ...report, warnings: [...remarks, ...report.warnings] };
  } finally {
    await handle.close();
  }
}
