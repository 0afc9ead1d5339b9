import { tagAt, viewOf } from './chunkTag.ts';
import { WavError } from './wavFormat.ts';
import type { WavFormat } from './wavFormat.ts';

/** Bytes that the header walk asks for; the answer is shorter where the file ends. */
export interface ByteRange {
  readonly offset: number;
  readonly length: number;
}

const PCM = 0x0001;
const FLOAT = 0x0003;
const EXTENSIBLE = 0xfffe;
/** What other format tags stand for. */
const CODING_NAMES: Readonly<Record<number, string>> = {
  0x0002: 'ADPCM',
  0x0006: 'A-law',
  0x0007: 'µ-law',
  0x0011: 'IMA ADPCM',
  0x0031: 'GSM',
  0x0050: 'MPEG',
  0x0055: 'MP3',
  0x00ff: 'AAC',
};
/** A length that a streaming writer leaves where it could not know it. */
const UNKNOWN_LENGTH = 0xffffffff;
/** More chunks than this before the sound mean garbage, not metadata. */
const MAX_CHUNKS = 4096;

/** Chunks that may follow one of odd length. */
const COMMON_TAGS: readonly string[] = [
  'data',
  'fmt ',
  'LIST',
  'fact',
  'JUNK',
  'PEAK',
  'bext',
  'cue ',
  'id3 ',
];

interface Coding {
  readonly sampleRateHz: number;
  readonly channelCount: number;
  readonly coding: 'pcm' | 'float';
  readonly containerBits: WavFormat['containerBits'];
  readonly bytesPerFrame: number;
}

/**
 * Finds the coding and the samples of a WAV held in memory.
 * @param bytes  the file, or its beginning when it reaches as far as the samples
 * @param fileLength  bytes of the whole file, >= bytes.length
 * @throws WavError when it is no WAV, is empty, is cut off before the sound or is in a coding not known here
 * @see Microsoft, "Multiple channel audio data and WAVE files"; EBU Tech 3306 (RF64)
 */
export function parseWavHeader(bytes: Uint8Array, fileLength: number = bytes.length): WavFormat {
  const walk = walkWavHeader(fileLength);
  let step = walk.next();
  while (step.done !== true) {
    const { offset, length } = step.value;
    step = walk.next(bytes.subarray(Math.min(offset, bytes.length), Math.min(offset + length, bytes.length)));
  }
  return step.value;
}

/**
 * The header walk itself, which asks for the bytes that it needs and so serves memory and files alike.
 * @param fileLength  bytes of the whole file
 * @throws WavError as `parseWavHeader`
 */
export function* walkWavHeader(fileLength: number): Generator<ByteRange, WavFormat, Uint8Array> {
  if (fileLength === 0) {
    throw new WavError({ code: 'empty-recording', fault: 'no-bytes' }, false);
  }
  const start = viewOf(yield { offset: 0, length: 12 });
  const form = start.byteLength >= 12 ? tagAt(start, 0) : '';
  if (form === 'RIFX') {
    throw new WavError({ code: 'not-audio', fault: 'big-endian' }, true);
  }
  if ((form !== 'RIFF' && form !== 'RF64' && form !== 'BW64') || tagAt(start, 8) !== 'WAVE') {
    throw new WavError({ code: 'not-audio', fault: 'no-wav' }, false);
  }
  let coding: Coding | null = null;
  let longDataLength: number | null = null;
  let offset = 12;
  for (let count = 0; count < MAX_CHUNKS; count += 1) {
    const head = viewOf(yield { offset, length: 8 });
    if (head.byteLength < 8) break;
    const tag = tagAt(head, 0);
    const declared = head.getUint32(4, true);
    const body = offset + 8;
    if (tag === 'data') {
      if (coding === null) {
        throw new WavError({ code: 'not-audio', fault: 'no-coding' }, true);
      }
      const length = declared === UNKNOWN_LENGTH ? longDataLength : declared;
      return placeSamples(coding, body, length, fileLength);
    }
    if (tag === 'fmt ') coding = parseCoding(viewOf(yield { offset: body, length: Math.min(declared, 40) }));
    if (tag === 'ds64' && declared >= 16) {
      const sizes = viewOf(yield { offset: body, length: 16 });
      if (sizes.byteLength === 16) longDataLength = Number(sizes.getBigUint64(8, true));
    }
    offset = body + declared;
    // Chunks begin at even offsets: an odd one is followed by a byte of padding, which some writers forget.
    if (declared % 2 === 1 && isPadded(viewOf(yield { offset, length: 5 }))) offset += 1;
  }
  throw new WavError({ code: 'empty-recording', fault: 'cut-off' }, true);
}

function parseCoding(fmt: DataView): Coding {
  if (fmt.byteLength < 16) {
    throw new WavError({ code: 'not-audio', fault: 'header-cut-off' }, true);
  }
  let tag = fmt.getUint16(0, true);
  const channelCount = fmt.getUint16(2, true);
  const sampleRateHz = fmt.getUint32(4, true);
  const bytesPerFrame = fmt.getUint16(12, true);
  const bits = fmt.getUint16(14, true);
  // The extensible form holds the real tag in the first two bytes of its sub-format.
  if (tag === EXTENSIBLE && fmt.byteLength >= 26) tag = fmt.getUint16(24, true);
  if (tag !== PCM && tag !== FLOAT) {
    const name = CODING_NAMES[tag] ?? null;
    throw new WavError({ code: 'not-audio', fault: 'coding', name, number: tag }, true);
  }
  if (channelCount < 1 || channelCount > 64) {
    throw new WavError({ code: 'not-audio', fault: 'channels', channelCount }, true);
  }
  if (sampleRateHz < 4000 || sampleRateHz > 768_000) {
    throw new WavError({ code: 'not-audio', fault: 'sample-rate', sampleRateHz }, true);
  }
  const containerBits = (bytesPerFrame / channelCount) * 8;
  const known: readonly number[] = tag === PCM ? [8, 16, 24, 32] : [32, 64];
  if (!known.includes(containerBits) || bits < 1 || bits > containerBits) {
    throw new WavError({ code: 'not-audio', fault: 'bits', bits, bytesPerFrame, channelCount }, true);
  }
  return {
    sampleRateHz,
    channelCount,
    coding: tag === PCM ? 'pcm' : 'float',
    containerBits: containerBits as WavFormat['containerBits'],
    bytesPerFrame,
  };
}

function placeSamples(
  coding: Coding,
  dataOffset: number,
  declaredLength: number | null,
  fileLength: number,
): WavFormat {
  const present = Math.max(0, fileLength - dataOffset);
  // A recorder that was stopped by force leaves 0 (or all ones) where the length belongs: take what is there.
  const unfinished = declaredLength === null || (declaredLength === 0 && present >= coding.bytesPerFrame);
  const length = unfinished ? present : Math.min(declaredLength, present);
  const frameCount = Math.floor(length / coding.bytesPerFrame);
  if (frameCount === 0) {
    throw new WavError({ code: 'empty-recording', fault: 'no-frames' }, true);
  }
  return { ...coding, dataOffset, frameCount, truncated: !unfinished && declaredLength > present };
}

/** @param bytes  five bytes after a chunk of odd length: padding and the next name, or the name at once */
function isPadded(bytes: DataView): boolean {
  if (bytes.byteLength < 5 || COMMON_TAGS.includes(tagAt(bytes, 1))) return true;
  return bytes.getUint8(0) === 0 || !COMMON_TAGS.includes(tagAt(bytes, 0));
}
