import { tagAt, viewOf, writeTag } from './chunkTag.ts';
import type { ReadBytes } from './wavReader.ts';

/** A named moment of a recording. */
export interface WavCue {
  /** Frame that it points at, 0..frames of the recording. */
  readonly frame: number;
  /** What a sound editor shows beside it; empty where the file gives none. */
  readonly label: string;
}

const CUE_BYTES = 24;
/** More than a lesson's marks by far; a file that claims more is damaged or hostile. */
const MOST_CUES = 5000;
const LONGEST_LABEL = 1000;
const MAX_CHUNKS = 4096;

/**
 * The chunks that carry cue points and their labels: `cue ` and `LIST` of type `adtl` with a `labl` each. They may
 * stand anywhere after `fmt `; here they are made to follow the sound.
 * @param cues  in any order; labels in ASCII, other characters become "?"
 * @returns whole chunks, padded to even length; empty where there are no cues
 * @throws RangeError on a frame that isn't a whole number from 0 to 2^32 - 1, or more than 5000 cues
 * @see IBM and Microsoft, Multimedia Programming Interface and Data Specifications 1.0, August 1991, "Waveform Audio
 *   File Format": cue-points chunk, associated data list
 */
export function encodeCues(cues: readonly WavCue[]): Uint8Array<ArrayBuffer> {
  if (cues.length === 0) return new Uint8Array(0);
  if (cues.length > MOST_CUES) throw new RangeError(`cues must be at most ${MOST_CUES}, got ${cues.length}`);
  const labels = cues.map((cue) => asciiBytes(cue.label));
  const points = new DataView(new ArrayBuffer(4 + CUE_BYTES * cues.length));
  points.setUint32(0, cues.length, true);
  cues.forEach(({ frame }, index) => {
    if (!Number.isInteger(frame) || frame < 0 || frame > 0xffffffff) {
      throw new RangeError(`frame must be a whole number from 0 to 2^32 - 1, got ${frame}`);
    }
    const at = 4 + CUE_BYTES * index;
    // Name, position in play order, chunk, its start, block start, offset in samples. One `data` chunk: both starts 0.
    points.setUint32(at, index + 1, true);
    points.setUint32(at + 4, frame, true);
    writeTag(points, at + 8, 'data');
    points.setUint32(at + 20, frame, true);
  });
  const texts = labels.map((label, index) => {
    const body = new Uint8Array(4 + label.length + 1);
    new DataView(body.buffer).setUint32(0, index + 1, true);
    body.set(label, 4);
    return chunk('labl', body);
  });
  const list = join([new TextEncoder().encode('adtl'), ...texts]);
  return join([chunk('cue ', new Uint8Array(points.buffer)), chunk('LIST', list)]);
}

/**
 * The cue points of a WAV with their labels, in order of time. Damaged or missing ones are left out: the sound
 * counts, and what can't be understood beside it is no reason to refuse it.
 * @param read  gives bytes of the file
 * @param fileLength  bytes of the whole file
 */
export async function readCues(read: ReadBytes, fileLength: number): Promise<readonly WavCue[]> {
  const frames = new Map<number, number>();
  const labels = new Map<number, string>();
  let offset = 12;
  for (let count = 0; count < MAX_CHUNKS && offset + 8 <= fileLength; count += 1) {
    const head = viewOf(await read(offset, 8));
    if (head.byteLength < 8) break;
    const tag = tagAt(head, 0);
    const length = head.getUint32(4, true);
    const isWanted = tag === 'cue ' || tag === 'LIST';
    if (isWanted && length <= MOST_CUES * LONGEST_LABEL) {
      const body = viewOf(await read(offset + 8, Math.min(length, fileLength - offset - 8)));
      if (tag === 'cue ') takePoints(body, frames);
      else takeLabels(body, labels);
    }
    offset += 8 + length + (length % 2);
  }
  return [...frames]
    .map(([name, frame]) => ({ frame, label: labels.get(name) ?? '' }))
    .sort((one, other) => one.frame - other.frame);
}

function takePoints(body: DataView, frames: Map<number, number>): void {
  const promised = body.byteLength >= 4 ? body.getUint32(0, true) : 0;
  const count = Math.min(promised, Math.floor((body.byteLength - 4) / CUE_BYTES), MOST_CUES);
  for (let index = 0; index < count; index += 1) {
    const at = 4 + CUE_BYTES * index;
    frames.set(body.getUint32(at, true), body.getUint32(at + 20, true));
  }
}

function takeLabels(body: DataView, labels: Map<number, string>): void {
  if (body.byteLength < 4 || tagAt(body, 0) !== 'adtl') return;
  let at = 4;
  while (at + 8 <= body.byteLength && labels.size < MOST_CUES) {
    const length = body.getUint32(at + 4, true);
    const end = Math.min(at + 8 + length, body.byteLength);
    if (tagAt(body, at) === 'labl' && length >= 4 && at + 12 <= end) {
      const bytes = new Uint8Array(body.buffer, body.byteOffset + at + 12, end - at - 12);
      const zero = bytes.indexOf(0);
      const text = bytes.subarray(0, Math.min(zero < 0 ? bytes.length : zero, LONGEST_LABEL));
      labels.set(body.getUint32(at + 8, true), new TextDecoder().decode(text));
    }
    at += 8 + length + (length % 2);
  }
}

function chunk(tag: string, body: Uint8Array): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(8 + body.length + (body.length % 2));
  const view = new DataView(bytes.buffer);
  writeTag(view, 0, tag);
  view.setUint32(4, body.length, true);
  bytes.set(body, 8);
  return bytes;
}

function join(parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return bytes;
}

function asciiBytes(text: string): Uint8Array {
  const plain = text.normalize('NFKD').replaceAll(/[^ -~]/g, '?');
  return new TextEncoder().encode(plain.slice(0, LONGEST_LABEL));
}
