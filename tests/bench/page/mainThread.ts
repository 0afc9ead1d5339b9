import type { CDPSession, Page } from 'playwright-core';

/** What the page's main thread did over a stretch of time. */
export interface MainThread {
  readonly durationS: number;
  /** Processor time of the main thread over that of the clock. */
  readonly busyShare: number;
  /** Longest task by the clock, ms: includes times at which the machine ran something else. */
  readonly longestTaskMs: number;
  /** Longest task by the processor time that it used, ms. */
  readonly longestCpuMs: number;
  readonly tasksOver50Ms: number;
  /** Milliseconds of script by function, most first. */
  readonly functions: readonly { readonly name: string; readonly ms: number }[];
}

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  readonly dur?: number;
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

/** Watches the main thread for a time by Chromium's own trace. @param withProfile  also says which functions took it */
export async function watchMainThread(
  page: Page,
  durationS: number,
  withProfile: boolean,
): Promise<MainThread> {
  const session = await page.context().newCDPSession(page);
  if (withProfile) {
    await session.send('Profiler.enable');
    await session.send('Profiler.setSamplingInterval', { interval: 1000 });
    await session.send('Profiler.start');
  }
  const events = await trace(session, page, durationS);
  const functions = withProfile ? await profile(session) : [];
  await session.detach();
  const names = events.filter((event) => event.ph === 'M' && event.name === 'thread_name');
  const isMain = (event: TraceEvent): boolean =>
    names.some(
      (name) => name.args?.name === 'CrRendererMain' && name.pid === event.pid && name.tid === event.tid,
    );
  const tasks = events.filter((event) => event.ph === 'X' && event.name.endsWith('RunTask') && isMain(event));
  const cpuUs = tasks.map((task) => task.tdur ?? task.dur ?? 0);
  const clockUs = tasks.map((task) => task.dur ?? 0);
  if (tasks.length === 0) throw new Error('The trace holds no task of the main thread.');
  return {
    durationS,
    busyShare: cpuUs.reduce((sum, us) => sum + us, 0) / 1e6 / durationS,
    longestTaskMs: clockUs.reduce((most, us) => Math.max(most, us), 0) / 1000,
    longestCpuMs: cpuUs.reduce((most, us) => Math.max(most, us), 0) / 1000,
    tasksOver50Ms: clockUs.filter((us) => us > 50_000).length,
    functions,
  };
}

async function trace(session: CDPSession, page: Page, durationS: number): Promise<TraceEvent[]> {
  const events: TraceEvent[] = [];
  session.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as TraceEvent[])));
  const done = new Promise<void>((resolve) => session.once('Tracing.tracingComplete', () => resolve()));
  await session.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: ['toplevel', '__metadata'] },
  });
  await page.waitForTimeout(durationS * 1000);
  await session.send('Tracing.end');
  await done;
  return events;
}

async function profile(session: CDPSession): Promise<MainThread['functions']> {
  const { profile: found } = await session.send('Profiler.stop');
  const self = new Map<string, number>();
  const byId = new Map(found.nodes.map((node) => [node.id, node]));
  found.samples?.forEach((id, index) => {
    const frame = byId.get(id)?.callFrame;
    if (frame === undefined || frame.functionName === '(idle)') return;
    const file = frame.url.split('/').at(-1) ?? '';
    const name = `${frame.functionName || '(anonymous)'} ${file}:${frame.lineNumber + 1}:${frame.columnNumber + 1}`;
    self.set(name, (self.get(name) ?? 0) + (found.timeDeltas?.[index] ?? 0) / 1000);
  });
  return [...self]
    .map(([name, ms]) => ({ name, ms }))
    .sort((one, other) => other.ms - one.ms)
    .slice(0, 40);
}
