/** A sentence of which one part is drawn apart: it leads elsewhere, or stands out. */
export interface PartedText {
  readonly before: string;
  readonly part: string;
  readonly after: string;
}
