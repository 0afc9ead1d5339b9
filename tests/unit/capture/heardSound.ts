import type { CaptureState, SampleBlock, SoundListener } from '../../../src/capture/soundSource.ts';

/** Keeps what a source says and delivers. */
export class HeardSound implements SoundListener {
  readonly states: CaptureState[] = [];
  readonly blocks: SampleBlock[] = [];
  onEveryBlock: () => void = () => undefined;

  onBlock(block: SampleBlock): void {
    this.blocks.push(block);
    this.onEveryBlock();
  }

  onState(state: CaptureState): void {
    this.states.push(state);
  }

  get kinds(): string[] {
    return this.states.map((state) => state.kind);
  }

  get frames(): number {
    return this.blocks.reduce((sum, block) => sum + block.samples.length, 0);
  }

  /** True when each block begins where the one before ended, or says that it does not. */
  get isSeamless(): boolean {
    return this.blocks.every((block, i) => {
      const before = this.blocks[i - 1];
      const next = before === undefined ? 0 : before.startFrame + before.samples.length;
      return block.startFrame === next || (block.discontinuity && block.startFrame > next);
    });
  }
}
