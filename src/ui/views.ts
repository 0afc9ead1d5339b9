/** The page's views, in the order of the work. An address names one after its #. */
export const VIEWS = [
  { id: 'measure', name: 'Measure' },
  { id: 'apparatus', name: 'Apparatus' },
  { id: 'check', name: 'Check' },
  { id: 'working', name: 'Working' },
  { id: 'compare', name: 'Compare' },
  { id: 'records', name: 'Records' },
] as const;

export type ViewId = (typeof VIEWS)[number]['id'];

/** What loads a view's elements when it is first opened; the first view is there from the start. */
export const LATER_VIEWS: Partial<Record<ViewId, () => Promise<unknown>>> = {
  apparatus: () => import('./apparatus/benchApparatus.ts'),
  check: () => import('./check/benchCheck.ts'),
  working: () => import('./analysis/benchWorking.ts'),
  compare: () => import('./analysis/benchCompare.ts'),
  records: () => import('./records/benchRecords.ts'),
};

/** The view that an address names; `measure` where it names none. */
export function viewOf(hash: string): ViewId {
  const id = hash.replace(/^#/, '');
  return VIEWS.find((view) => view.id === id)?.id ?? 'measure';
}
