/** Colours of a picture; CSS colour values. */
export interface PlotPalette {
  readonly paper: string;
  readonly ink: string;
  readonly soft: string;
  readonly line: string;
  readonly tone: string;
  readonly room: string;
}

/** Black on white, for files and print. */
export const PRINT_PALETTE: PlotPalette = {
  paper: '#ffffff',
  ink: '#22262a',
  soft: '#545b61',
  line: '#cfcabd',
  tone: '#a3440a',
  room: '#2a5d8c',
};

export interface PlotPoint {
  readonly x: number;
  readonly y: number;
  /** Half length of the bar through the point, in y; null draws none. */
  readonly yBar: number | null;
  readonly shape: 'disc' | 'ring' | 'cross' | 'diamond';
  readonly colour: 'tone' | 'room' | 'ink' | 'soft';
  readonly label: string | null;
}

export interface PlotLine {
  readonly points: readonly { readonly x: number; readonly y: number }[];
  readonly dash: string | null;
  readonly colour: 'tone' | 'room' | 'ink' | 'soft';
}

/** A band between two curves over the same x. */
export interface PlotBand {
  readonly points: readonly { readonly x: number; readonly low: number; readonly high: number }[];
}

/** A picture of numbers, before it is drawn. */
export interface Plot {
  readonly title: string;
  readonly xLabel: string;
  readonly yLabel: string;
  /** What the picture shows, for those who don't see it. */
  readonly words: string;
  readonly points: readonly PlotPoint[];
  readonly lines: readonly PlotLine[];
  readonly bands: readonly PlotBand[];
  /** Values that must be in sight beside the data. */
  readonly include: { readonly x: readonly number[]; readonly y: readonly number[] };
}

/** Typefaces of a picture's texts, the first that is there. */
export const PLOT_FONTS = ['Segoe UI', 'Noto Sans', 'Liberation Sans', 'sans-serif'].join(', ');

/** More labels than these stand on each other, wherever they are put. */
export const MOST_LABELS = 30;

/** Round steps for an axis. @param low  < high @returns ascending values within low..high */
export function roundTicks(low: number, high: number, most: number): readonly number[] {
  if (!(high > low)) throw new RangeError(`high must be above ${low}, got ${high}`);
  const rough = (high - low) / most;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 5, 10].find((factor) => factor * power >= rough) ?? 10) * power;
  const ticks: number[] = [];
  for (let k = Math.ceil(low / step - 1e-9); k * step <= high + step * 1e-9; k += 1) {
    ticks.push(Number((k * step).toPrecision(12)));
  }
  return ticks;
}
