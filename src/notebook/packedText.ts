/**
 * A value as a short text that an address may hold: letters, digits, - and _ alone. One character says how it is packed,
 * six hold a digest of what follows, so that a text that lost its end is known as such.
 */

/** How the bytes are packed. */
const PLAIN = '1';
const DEFLATED = '2';
const DIGEST_LENGTH = 6;

/** What a packed text holds, or why it can't be read. `no-inflate`: this browser can't unpack it, a newer one can. */
export type Unpacked = { readonly value: unknown } | { readonly fault: 'damaged' | 'no-inflate' | 'newer' };

/**
 * Packs a JSON value, with the browser's own compression where it has one (Chrome 80, Safari 16.4, Firefox 113) and that
 * makes it shorter.
 */
export async function packed(value: unknown): Promise<string> {
  const bytes = new TextEncoder().encode(JSON.stringify(value));
  const shorter =
    typeof CompressionStream === 'function' ? await through(new CompressionStream('deflate'), bytes) : null;
  const isShorter = shorter !== null && shorter.length < bytes.length;
  const body = isShorter ? shorter : bytes;
  return (isShorter ? DEFLATED : PLAIN) + base64(digestBytes(body)) + base64(body);
}

/**
 * Reads a packed text. What a chat program or a sentence leaves at its end (a full stop, a bracket) is taken off.
 * @param mostBytes  what unpacks to more is taken for damaged
 */
export async function unpacked(text: string, mostBytes: number): Promise<Unpacked> {
  const trimmed = withoutEnding(text);
  const kind = trimmed.charAt(0);
  const damaged = { fault: 'damaged' } as const;
  if (/^[3-9]/.test(kind)) return { fault: 'newer' };
  if (kind !== PLAIN && kind !== DEFLATED) return damaged;
  const body = bytesOf(trimmed.slice(1 + DIGEST_LENGTH));
  if (body === null || base64(digestBytes(body)) !== trimmed.slice(1, 1 + DIGEST_LENGTH)) return damaged;
  if (kind === DEFLATED && typeof DecompressionStream !== 'function') return { fault: 'no-inflate' };
  try {
    const bytes = kind === PLAIN ? body : await through(new DecompressionStream('deflate'), body, mostBytes);
    return { value: JSON.parse(new TextDecoder().decode(bytes)) as unknown };
  } catch {
    return damaged;
  }
}

/** An address without what stands after it in a sentence. */
export function withoutEnding(text: string): string {
  return text.replace(/(?:%[\da-f]{2}|[^\w-])+$/i, '');
}

/** 32 bits that differ where texts do: the FNV-1a hash (Fowler, Noll, Vo). No secret is safe behind it. */
export function digest(bytes: Uint8Array): number {
  let hash = 0x811c9dc5;
  for (const byte of bytes) hash = Math.imul(hash ^ byte, 0x01000193);
  return hash >>> 0;
}

function digestBytes(bytes: Uint8Array): Uint8Array {
  const four = new Uint8Array(4);
  new DataView(four.buffer).setUint32(0, digest(bytes));
  return four;
}

function base64(bytes: Uint8Array): string {
  const text = btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
  return text.replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

/** Null for what is no base64. */
export function bytesOf(text: string): Uint8Array<ArrayBuffer> | null {
  try {
    const plain = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
    return Uint8Array.from(plain, (character) => character.charCodeAt(0));
  } catch {
    return null;
  }
}

/** Rejects where the stream does, and beyond `mostBytes`. */
async function through(
  stream: CompressionStream | DecompressionStream,
  bytes: Uint8Array<ArrayBuffer>,
  mostBytes = Infinity,
): Promise<Uint8Array> {
  const writer = stream.writable.getWriter();
  // What the reader sees as a fault, the writer does, too.
  const written = writer.write(bytes).then(() => writer.close());
  written.catch(() => undefined);
  const reader = (stream.readable as ReadableStream<Uint8Array>).getReader();
  const parts: number[] = [];
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    if (parts.length + value.length > mostBytes) {
      await reader.cancel();
      throw new RangeError('too long');
    }
    for (const byte of value) parts.push(byte);
  }
  await written;
  return Uint8Array.from(parts);
}
