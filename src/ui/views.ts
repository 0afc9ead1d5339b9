/** The page's views, in the order of the work. An address names one after its #. */
export const VIEWS = [
  { id: 'measure' },
  { id: 'apparatus' },
  { id: 'check' },
  { id: 'working' },
  { id: 'compare' },
  { id: 'records' },
] as const;

/** Views that are reached from another one, which stays the current one in the list of views. */
export const INNER_VIEWS = [
  { id: 'report', of: 'records' },
  { id: 'microphone', of: 'check' },
  { id: 'class', of: 'records' },
] as const;

export type ViewId = (typeof VIEWS)[number]['id'] | (typeof INNER_VIEWS)[number]['id'];

/** What loads a view's elements when it is first opened; the first view is there from the start. */
export const LATER_VIEWS: Partial<Record<ViewId, () => Promise<unknown>>> = {
  apparatus: () => import('./apparatus/apparatusElement.ts'),
  check: () => import('./check/checkElement.ts'),
  working: () => import('./analysis/workingElement.ts'),
  compare: () => import('./analysis/compareElement.ts'),
  records: () => import('./records/recordsElement.ts'),
  report: () => import('./records/reportElement.ts'),
  microphone: () => import('./check/microphoneElement.ts'),
  class: () => import('./class/classElement.ts'),
};

/** The view that an address names; `measure` where it names none. */
export function viewOf(hash: string): ViewId {
  const id = hash.replace(/^#/, '');
  return [...VIEWS, ...INNER_VIEWS].find((view) => view.id === id)?.id ?? 'measure';
}

/** The view of the list that this one is or belongs to. */
export function listedView(id: ViewId): ViewId {
  return INNER_VIEWS.find((view) => view.id === id)?.of ?? id;
}
