import type { SampleBlock } from '../../capture/soundSource.ts';
import type { KnownTube } from '../../resonance/following/columnGuess.ts';
import type { FollowedPlace } from '../../resonance/following/followedPlace.ts';
import { checkLength } from '../../resonance/lengthCheck/checkLength.ts';
import type { LengthCheck } from '../../resonance/lengthCheck/checkLength.ts';
import { ToneStream } from '../../tone/toneStream.ts';
import { Listening } from '../hearing/listening.ts';
import { withoutMaybe } from '../hearing/withoutMaybe.ts';
import { followingTools } from '../hearing/followingTools.ts';
import type { ForkPitch, ListeningReport, Resonance } from '../hearing/listeningTypes.ts';
import { FollowingAnalysis } from './followingAnalysis.ts';
import { RecordingListening } from './recordingListening.ts';

/** The tube that is slid; its fork is the one that is listened for. */
export type FollowedTube = Omit<KnownTube, 'frequencyHz'>;

/** What is asked of a recording. */
export interface AnalysisOptions {
  readonly sampleRateHz: number;
  readonly fork: ForkPitch;
  /** Report what the online detector flags, each with `flaggedAtS`, instead of the resonances that are detected offline. */
  readonly live?: boolean;
  /** Also judge whether the fixed column is at resonance. */
  readonly check?: boolean;
  /** Also follow the column after each pass; the tube where it is known. */
  readonly follow?: { readonly tube: FollowedTube | null };
}

/** A report with the answer to "is this length at resonance?" where it was asked. */
export interface CheckedReport extends ListeningReport {
  readonly check: LengthCheck | null;
  /** Where the column was after each pass, ten times a second; null where it wasn't asked for. */
  readonly following: readonly FollowedPlace[] | null;
}

const BLOCK = 4096;

/**
 * The stages over a whole recording that is in memory.
 * @param samples  mono, any length
 * @throws RangeError when the fork's pitch doesn't fit the sample rate
 */
export function analyseRecording(samples: Float32Array, options: AnalysisOptions): CheckedReport {
  const analysis = new RecordingAnalysis(options);
  for (let start = 0; start < samples.length; start += BLOCK) {
    analysis.push({
      samples: samples.subarray(start, start + BLOCK),
      startFrame: start,
      discontinuity: false,
    });
  }
  return analysis.finish();
}

/** The same, block by block, for recordings that are read piece by piece, in memory that doesn't grow with their length (except for a check's). */
export class RecordingAnalysis {
  private readonly listening: RecordingListening;
  private readonly options: AnalysisOptions;
  private flagged: readonly Resonance[] = [];
  /** The judgement of one length needs all of the sound at once; null where it isn't asked for. */
  private readonly whole: ToneStream | null;
  private readonly following: FollowingAnalysis | null;

  /** @throws RangeError when the fork's pitch doesn't fit the sample rate */
  constructor(options: AnalysisOptions) {
    this.options = options;
    const { sampleRateHz, fork, follow } = options;
    const tube = follow?.tube ?? null;
    const known = tube === null ? null : { ...tube, frequencyHz: fork.nominalHz };
    const { centreOf } = followingTools(() => known);
    this.following = follow === undefined ? null : new FollowingAnalysis({ sampleRateHz, fork, tube: known });
    this.listening = new RecordingListening(
      sampleRateHz,
      () => new Listening({ sampleRateHz, fork, centreOf }),
    );
    this.whole = options.check === true ? new ToneStream(sampleRateHz, fork.nominalHz) : null;
  }

  push(block: SampleBlock): void {
    this.take(this.listening.push(block).resonances);
    this.whole?.push(block.samples);
    this.following?.push(block.samples);
  }

  finish(): CheckedReport {
    this.take(this.listening.finish().resonances);
    const found = this.listening.offlineReport();
    const report = { ...found, check: this.check(), following: this.following?.finish() ?? null };
    if (this.options.live !== true) return report;
    const resonances = [...this.flagged].sort((a, b) => a.timeS - b.timeS);
    return { ...report, resonances };
  }

  private take(resonances: readonly Resonance[]): void {
    for (const resonance of resonances) {
      this.flagged = [...withoutMaybe(this.flagged, resonance.maybeS), resonance];
    }
  }

  private check(): LengthCheck | null {
    this.whole?.finish();
    return this.whole === null ? null : checkLength(this.whole.series, this.options.fork.toleranceHz);
  }
}
