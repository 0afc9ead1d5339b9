/** A view of just these bytes, wherever they lie in their buffer. */
export function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

/** The four characters that name a chunk. @param offset  first of them; four bytes must follow */
export function tagAt(view: DataView, offset: number): string {
  let tag = '';
  for (let i = offset; i < offset + 4; i += 1) tag += String.fromCharCode(view.getUint8(i));
  return tag;
}

/** Writes a chunk's name. @param tag  four characters of ASCII */
export function writeTag(view: DataView, offset: number, tag: string): void {
  for (let i = 0; i < 4; i += 1) view.setUint8(offset + i, tag.charCodeAt(i));
}
