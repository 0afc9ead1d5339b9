import { Session } from 'node:inspector/promises';

/** Bytes between two samples of the allocation profiler, mean. */
const INTERVAL = 128;

interface ProfileNode {
  readonly selfSize: number;
  readonly children: readonly ProfileNode[];
}

/** Bytes that a job allocates on the heap, collected ones included, as the engine's sampling profiler estimates. */
export async function allocatedBytes(job: () => void): Promise<number> {
  const session = new Session();
  session.connect();
  await session.post('HeapProfiler.startSampling', {
    samplingInterval: INTERVAL,
    includeObjectsCollectedByMajorGC: true,
    includeObjectsCollectedByMinorGC: true,
  } as object);
  job();
  const { profile } = await session.post('HeapProfiler.stopSampling');
  session.disconnect();
  return sizeOf(profile.head);
}

const sizeOf = (node: ProfileNode): number =>
  node.selfSize + node.children.reduce((sum, child) => sum + sizeOf(child), 0);

/** Bytes on the heap that something still holds. */
export async function heapBytes(): Promise<number> {
  const session = new Session();
  session.connect();
  await session.post('HeapProfiler.collectGarbage');
  session.disconnect();
  return process.memoryUsage().heapUsed;
}
