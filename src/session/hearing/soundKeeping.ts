import { ClipRecorder } from '../../capture/clipRecorder.ts';
import type { ClipPiece } from '../../capture/clipRecorder.ts';
import type { SampleBlock, SoundSource } from '../../capture/soundSource.ts';
import { soundBytes } from '../../notebook/keptSound.ts';
import type { KeptSound } from '../../notebook/keptSound.ts';
import { storageFault } from '../../notebook/storageFault.ts';
import type { StorageFault } from '../../notebook/storageFault.ts';
import type { SoundStore } from '../experiment/keeping.ts';
import type { Sounding } from './listeningTypes.ts';
import type { Tell } from '../notice.ts';

export interface SoundKeepingOutside {
  now(): string;
  newId(): string;
  /** Null while nothing can be stored. */
  store(): SoundStore | null;
  onChange(): void;
  tell: Tell;
}

/** What a run is about: each of its soundings is kept with it. */
export interface SoundRun {
  readonly experimentId: string;
  readonly source: SoundSource['kind'];
  readonly forkHz: number;
  readonly sampleRateHz: number;
}

/** All kept sound together may take so much: 17 minutes at 48 kHz. */
export const SOUND_LIMIT_BYTES = 100_000_000;

/** Keeps the sound of each sounding, only while it is asked for, and never more than the limit. */
export class SoundKeeping {
  isOn = false;
  /** Of all experiments. */
  usedBytes = 0;
  private recorder: ClipRecorder | null = null;
  private run: SoundRun | null = null;
  private sounds = new Map<number, { sound: KeptSound; startS: number }>();
  private writing: Promise<void> = Promise.resolve();

  constructor(private readonly outside: SoundKeepingOutside) {}

  /** Begins to keep the sound of soundings from now on. */
  async turnOn(): Promise<void> {
    const store = this.outside.store();
    if (store === null) {
      this.outside.tell('problem', { code: 'sound-not-kept', why: 'nothing-stored' });
      return;
    }
    await this.recount();
    this.isOn = true;
    this.begin(this.run);
    this.outside.onChange();
  }

  /** Counts what is kept anew, as after some was deleted. Rejects where storage fails. */
  async recount(): Promise<void> {
    await this.writing;
    const sounds = (await this.outside.store()?.listSounds()) ?? [];
    this.usedBytes = sounds.reduce((sum, sound) => sum + soundBytes(sound), 0);
  }

  /** Keeps no more; what is kept stays. */
  turnOff(): void {
    if (!this.isOn) return;
    this.keep(this.recorder?.finish() ?? []);
    this.isOn = false;
    this.recorder = null;
    this.outside.onChange();
  }

  /** A run begins, or goes on for another fork; null: it has ended. */
  begin(run: SoundRun | null): void {
    this.keep(this.recorder?.finish() ?? []);
    this.run = run;
    this.sounds = new Map();
    // A recording is a file already.
    const isKept = this.isOn && run !== null && run.source !== 'recording';
    this.recorder = isKept ? new ClipRecorder(run.sampleRateHz) : null;
  }

  push(block: SampleBlock): void {
    if (this.recorder !== null) this.keep(this.recorder.push(block));
  }

  takeSoundings(soundings: readonly Sounding[]): void {
    for (const { index, startS, endS } of soundings) {
      if (this.recorder !== null) this.keep(this.recorder.sounding(index, startS, endS));
    }
  }

  /** Ties a mark to the sounding it was flagged in. @param timeS  of its peak on the run's time axis */
  addMark(markId: string, timeS: number): void {
    const kept = [...this.sounds.values()].reverse().find(({ startS }) => startS <= timeS);
    if (kept === undefined) return;
    const marks = [...kept.sound.marks, { markId, timeS: timeS - kept.startS }];
    kept.sound = { ...kept.sound, marks };
    this.write(kept.sound, 0, new Int16Array(0));
  }

  /** Settles when all is written that was heard so far. */
  idle(): Promise<void> {
    return this.writing;
  }

  private keep(pieces: readonly ClipPiece[]): void {
    for (const piece of pieces) this.keepPiece(piece);
  }

  private keepPiece({ soundingIndex, clipStartS, clipFrame, samples }: ClipPiece): void {
    const { run } = this;
    if (run === null || !this.isOn) return;
    if (this.usedBytes + samples.byteLength > SOUND_LIMIT_BYTES) {
      this.giveUp('limit');
      return;
    }
    const kept = this.sounds.get(soundingIndex) ?? { sound: this.newSound(run), startS: clipStartS };
    kept.sound = { ...kept.sound, frameCount: clipFrame + samples.length };
    this.sounds.set(soundingIndex, kept);
    this.usedBytes += samples.byteLength;
    this.write(kept.sound, clipFrame, samples);
    this.outside.onChange();
  }

  private newSound(run: SoundRun): KeptSound {
    return {
      id: this.outside.newId(),
      createdAt: this.outside.now(),
      ...run,
      sampleRateHz: Math.round(run.sampleRateHz),
      frameCount: 0,
      marks: [],
    };
  }

  private write(sound: KeptSound, startFrame: number, samples: Int16Array<ArrayBuffer>): void {
    this.writing = this.writing.then(async () => {
      try {
        await this.outside.store()?.addSoundPiece(sound, startFrame, samples);
      } catch (error) {
        this.giveUp(storageFault(error));
      }
    });
  }

  /** Marks go on being kept: they need far less room. */
  private giveUp(why: 'limit' | StorageFault): void {
    if (!this.isOn) return;
    this.isOn = false;
    this.recorder = null;
    this.outside.tell('problem', { code: 'sound-not-kept', why });
    this.outside.onChange();
  }
}
