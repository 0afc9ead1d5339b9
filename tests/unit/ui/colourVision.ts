/**
 * How colours look to people with dichromatic vision, and how far two colours are apart.
 * Simulation: Machado, Oliveira & Fernandes 2009, “A Physiologically-based Model for Simulation of Color Vision
 * Deficiency”, IEEE Trans. Vis. Comput. Graph. 15(6), 1291, table 1, severity 1.0; matrices from memory, each row's sum
 * checked to be 1 by a test. They apply to linear sRGB (IEC 61966-2-1).
 */
export const DEFICIENCIES = {
  protanopia: [0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998],
  deuteranopia: [0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.01182, 0.04294, 0.968881],
  tritanopia: [1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.3039],
} as const;

export type Vision = 'usual' | keyof typeof DEFICIENCIES;
type Triple = readonly [number, number, number];

/** Linear sRGB, 0..1, of “#rrggbb”. */
export function linearRgb(hex: string): Triple {
  const value = parseInt(hex.slice(1), 16);
  const channel = (shift: number): number => {
    const encoded = ((value >> shift) & 255) / 255;
    return encoded <= 0.04045 ? encoded / 12.92 : ((encoded + 0.055) / 1.055) ** 2.4;
  };
  return [channel(16), channel(8), channel(0)];
}

export function seenBy(vision: Vision, [r, g, b]: Triple): Triple {
  if (vision === 'usual') return [r, g, b];
  const m = DEFICIENCIES[vision];
  const row = (i: number): number => {
    const sum = (m[i] ?? 0) * r + (m[i + 1] ?? 0) * g + (m[i + 2] ?? 0) * b;
    return Math.min(Math.max(sum, 0), 1);
  };
  return [row(0), row(3), row(6)];
}

/** CIE 1976 L*a*b* under D65 (ISO/CIE 11664-4; sRGB primaries from IEC 61966-2-1). */
function lab([r, g, b]: Triple): Triple {
  const f = (t: number): number => (t > (6 / 29) ** 3 ? Math.cbrt(t) : t / (3 * (6 / 29) ** 2) + 4 / 29);
  const x = f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
  const y = f(0.2126 * r + 0.7152 * g + 0.0722 * b);
  const z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

/** CIE 1976 colour difference of two colours as somebody sees them. */
export function difference(one: string, other: string, vision: Vision): number {
  const [a, b] = [one, other].map((hex) => lab(seenBy(vision, linearRgb(hex)))) as [Triple, Triple];
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

/** Contrast ratio, WCAG 2.2: (L1 + 0.05)/(L2 + 0.05). */
export function contrast(one: string, other: string): number {
  const [a, b] = [one, other].map((hex) => {
    const [r, g, blue] = linearRgb(hex);
    return 0.2126 * r + 0.7152 * g + 0.0722 * blue;
  }) as [number, number];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}
