import type { ListeningLike, ListeningOrder } from '../session/hearing/listeningLike.ts';

const load = async () => {
  const [{ Listening }, { followingTools }] = await Promise.all([
    import('../session/hearing/listening.ts'),
    import('../session/hearing/followingTools.ts'),
  ]);
  return { Listening, followingTools };
};

/** What listens, loaded beside the page: it can be looked at and typed into before. */
export class LateListening {
  private loading: ReturnType<typeof load> | null = null;
  private loaded: Awaited<ReturnType<typeof load>> | null = null;

  /** Begins to load, or goes on. Rejects where a piece can't be had; asked again, it tries again. */
  async load(): Promise<void> {
    try {
      this.loading ??= load();
      this.loaded = await this.loading;
    } catch (error) {
      this.loading = null;
      throw error;
    }
  }

  /** @throws Error where it wasn't loaded before, and RangeError when the fork's frequency doesn't fit the sample rate */
  create({ sampleRateHz, fork, tube }: ListeningOrder): ListeningLike {
    if (this.loaded === null) throw new Error('not loaded');
    const { Listening, followingTools } = this.loaded;
    return new Listening({ sampleRateHz, fork, ...followingTools(tube) });
  }
}
