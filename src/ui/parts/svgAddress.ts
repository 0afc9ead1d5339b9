import { wellFormed } from '../../limits/texts.ts';

/** An SVG file as the address of a picture. */
export function svgAddress(svg: string): string {
  return `data:image/svg+xml,${encodeURIComponent(wellFormed(svg))}`;
}
