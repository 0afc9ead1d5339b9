/**
 * What changed: `live` twenty times a second while listening, the others on an event. `answers`: what was still being
 * worked out came.
 */
export type Topic = 'live' | 'notebook' | 'capture' | 'notice' | 'keeping' | 'answers';

/** Tells those who watch a topic that it changed. They read the new state from the session. */
export class Topics {
  private readonly watchers = new Map<Topic, Set<() => void>>();
  /** Watchers that threw the last time they were called: each such row of faults is reported once. */
  private readonly failing = new Set<() => void>();

  /** @param onFaults  told what watchers threw, after all of them were called */
  constructor(private readonly onFaults: (errors: readonly unknown[]) => void) {}

  /** Calls back after every change of one of these topics, until the returned function is called. */
  watch(topics: readonly Topic[], callback: () => void): () => void {
    for (const topic of topics) {
      const set = this.watchers.get(topic) ?? new Set();
      this.watchers.set(topic, set.add(callback));
    }
    return () => {
      topics.forEach((topic) => this.watchers.get(topic)?.delete(callback));
      this.failing.delete(callback);
    };
  }

  /** Calls every watcher of the topic, whatever the ones before it throw. */
  announce(topic: Topic): void {
    const errors: unknown[] = [];
    for (const callback of [...(this.watchers.get(topic) ?? [])]) {
      try {
        callback();
        this.failing.delete(callback);
      } catch (error) {
        if (!this.failing.has(callback)) errors.push(error);
        this.failing.add(callback);
      }
    }
    if (errors.length > 0) this.onFaults(errors);
  }
}
