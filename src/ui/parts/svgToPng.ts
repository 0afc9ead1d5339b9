import { svgAddress } from './svgAddress.ts';

/** Twice the picture's own size: sharp in print. */
const SCALE = 2;

/** Draws an SVG file into a PNG. Rejects where the browser can't decode it. */
export async function svgToPng(svg: string): Promise<Blob> {
  const image = new Image();
  image.src = svgAddress(svg);
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = image.naturalWidth * SCALE;
  canvas.height = image.naturalHeight * SCALE;
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) => {
    canvas.toBlob((blob) => (blob === null ? reject(new Error('canvas.toBlob gave null')) : resolve(blob)));
  });
}
