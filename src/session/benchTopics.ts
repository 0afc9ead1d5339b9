/**
 * What changed: `live` twenty times a second while listening, the others on an event. `answers`: what was still being
 * worked out came.
 */
export type BenchTopic = 'live' | 'notebook' | 'capture' | 'notice' | 'keeping' | 'answers';

/** Tells those who watch a topic that it changed. They read the new state from the session. */
export class BenchTopics {
  private readonly watchers = new Map<BenchTopic, Set<() => void>>();

  /** Calls back after every change of one of these topics, until the returned function is called. */
  watch(topics: readonly BenchTopic[], callback: () => void): () => void {
    for (const topic of topics) {
      const set = this.watchers.get(topic) ?? new Set();
      this.watchers.set(topic, set.add(callback));
    }
    return () => topics.forEach((topic) => this.watchers.get(topic)?.delete(callback));
  }

  announce(topic: BenchTopic): void {
    for (const callback of [...(this.watchers.get(topic) ?? [])]) callback();
  }
}
