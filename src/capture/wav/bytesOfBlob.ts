import type { ReadBytes } from './wavReader.ts';

/** Reads a file that was chosen piece by piece, so that an hour never lies in memory. */
export function bytesOfBlob(file: Blob): ReadBytes {
  return async (offset, length) => new Uint8Array(await file.slice(offset, offset + length).arrayBuffer());
}
