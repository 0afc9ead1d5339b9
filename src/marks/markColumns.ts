/** One column of a table of marks. Units stand in the names. */
interface MarkColumn {
  readonly name: string;
  /** `required`: no row without it. `read`: may be absent. `shown`: written for people, passed over when read. */
  readonly use: 'required' | 'read' | 'shown';
  /** Whether the marks of one experiment are written with it. */
  readonly isWritten: boolean;
}

/** Every column that a table of marks may have, in the order in which it is written. */
export const MARK_COLUMNS = [
  { name: 'group', use: 'read', isWritten: false },
  { name: 'fork_hz', use: 'required', isWritten: true },
  { name: 'ends', use: 'required', isWritten: true },
  { name: 'length_cm', use: 'required', isWritten: true },
  { name: 'diameter_mm', use: 'read', isWritten: true },
  { name: 'other_diameter_mm', use: 'read', isWritten: true },
  { name: 'mouth', use: 'read', isWritten: true },
  { name: 'gas', use: 'read', isWritten: true },
  { name: 'temperature_c', use: 'read', isWritten: true },
  { name: 'temperature_uncertainty_c', use: 'read', isWritten: true },
  { name: 'humidity_pct', use: 'read', isWritten: true },
  { name: 'pressure_hpa', use: 'read', isWritten: true },
  { name: 'co2_ppm', use: 'read', isWritten: true },
  { name: 'place', use: 'read', isWritten: true },
  { name: 'order', use: 'read', isWritten: true },
  { name: 'length_uncertainty_mm', use: 'read', isWritten: true },
  { name: 'fork_uncertainty_hz', use: 'read', isWritten: true },
  { name: 'fork_id', use: 'read', isWritten: true },
  { name: 'excluded', use: 'read', isWritten: true },
  { name: 'other_length_cm', use: 'read', isWritten: true },
  { name: 'located_by', use: 'read', isWritten: true },
  { name: 'rise_db', use: 'read', isWritten: true },
  { name: 'above_room_db', use: 'shown', isWritten: true },
  { name: 'confidence', use: 'shown', isWritten: true },
  { name: 'centre_uncertainty_half_widths', use: 'read', isWritten: true },
  { name: 'made_at', use: 'read', isWritten: true },
  { name: 'note', use: 'read', isWritten: true },
] as const satisfies readonly MarkColumn[];

type NamesOf<T extends { readonly name: string }> = T['name'];
type AnyColumn = (typeof MARK_COLUMNS)[number];

export type RequiredColumn = NamesOf<Extract<AnyColumn, { readonly use: 'required' }>>;
/** A column that is read where it is there. */
export type ReadColumn = NamesOf<Exclude<AnyColumn, { readonly use: 'shown' }>>;
/** A column of the marks' CSV. */
export type WrittenColumn = NamesOf<Extract<AnyColumn, { readonly isWritten: true }>>;

export const REQUIRED_COLUMNS = MARK_COLUMNS.filter((column) => column.use === 'required').map(
  (column): RequiredColumn => column.name,
);
export const READ_COLUMNS = MARK_COLUMNS.filter((column) => column.use !== 'shown').map(
  (column): ReadColumn => column.name,
);
export const OPTIONAL_COLUMNS = MARK_COLUMNS.filter((column) => column.use === 'read').map(
  (column) => column.name,
);
export const WRITTEN_COLUMNS = MARK_COLUMNS.filter((column) => column.isWritten).map(
  (column): WrittenColumn => column.name,
);
