/** The page's views, in the order of the work. `href` is the part after #. */
export const VIEWS = [
  { id: 'measure', name: 'Measure' },
  { id: 'apparatus', name: 'Apparatus' },
  { id: 'records', name: 'Records' },
] as const;

export type ViewId = (typeof VIEWS)[number]['id'];

/** The view that an address names; `measure` where it names none. */
export function viewOf(hash: string): ViewId {
  const id = hash.replace(/^#/, '');
  return VIEWS.find((view) => view.id === id)?.id ?? 'measure';
}
