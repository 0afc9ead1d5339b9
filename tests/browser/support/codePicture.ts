import jsQR from 'jsqr';
import type { Locator, Page } from 'playwright-core';

/** A picture as a camera sees it: RGBA, row by row. */
export interface CodePicture {
  readonly data: Uint8ClampedArray;
  readonly width: number;
  readonly height: number;
}

/** Takes a picture of an element of the page. @param reader  another page, without the bench's content policy */
export async function pictureOf(element: Locator, reader: Page): Promise<CodePicture> {
  const png = (await element.screenshot()).toString('base64');
  const { base64, width, height } = await reader.evaluate(async (text) => {
    const bytes = Uint8Array.from(atob(text), (character) => character.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
    const canvas = document.createElement('canvas');
    canvas.width = bitmap.width;
    canvas.height = bitmap.height;
    const context = canvas.getContext('2d');
    context?.drawImage(bitmap, 0, 0);
    const image = context?.getImageData(0, 0, canvas.width, canvas.height);
    const url = await new Promise<string>((resolve) => {
      const file = new FileReader();
      file.onload = () => resolve(file.result as string);
      file.readAsDataURL(new Blob([image?.data.buffer as ArrayBuffer]));
    });
    return { base64: url.slice(url.indexOf(',') + 1), width: canvas.width, height: canvas.height };
  }, png);
  return { data: new Uint8ClampedArray(Buffer.from(base64, 'base64')), width, height };
}

/** What the code in a picture says, by a reader that had no part in drawing it; null where it can't be read. */
export function readPicture({ data, width, height }: CodePicture): string | null {
  return jsQR(data, width, height)?.data ?? null;
}

/** One still frame as a film for Chromium's pretended camera: the picture in the middle of 1280 × 720 of grey (YUV4MPEG2). */
export function filmOf(picture: CodePicture): Buffer {
  const [width, height] = [1280, 720];
  const luma = Buffer.alloc(width * height, 120);
  const left = Math.floor((width - picture.width) / 2);
  const top = Math.floor((height - picture.height) / 2);
  if (left < 0 || top < 0) throw new RangeError('the picture must fit into the frame');
  for (let y = 0; y < picture.height; y += 1) {
    for (let x = 0; x < picture.width; x += 1) {
      luma[(top + y) * width + left + x] = picture.data[4 * (y * picture.width + x)] ?? 0;
    }
  }
  const header = `YUV4MPEG2 W${width} H${height} F10:1 Ip A1:1 C420jpeg\n`;
  const chroma = Buffer.alloc((width * height) / 2, 128);
  return Buffer.concat([Buffer.from(header), Buffer.from('FRAME\n'), luma, chroma]);
}
