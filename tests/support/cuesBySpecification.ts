/** A WAV's sound and cue points as the specification lays them out. */
export interface SpecifiedCues {
  readonly frames: number;
  readonly cues: readonly { readonly frame: number; readonly label: string | undefined }[];
}

/**
 * Reads a WAV's cue points with nothing of the bench's own, and takes nothing that isn't exactly so: "Multimedia
 * Programming Interface and Data Specifications 1.0" (IBM and Microsoft, August 1991). RIFF chunks; `cue ` with
 * dwCuePoints and 24 bytes each (dwName, dwPosition, fccChunk, dwChunkStart, dwBlockStart, dwSampleOffset); LIST `adtl`
 * with `labl` (dwName, text that ends with a zero byte).
 * @throws Error that names what departs from it
 */
export function cuesBySpecification(bytes: Buffer): SpecifiedCues {
  const points = new Map<number, number>();
  const labels = new Map<number, string>();
  let blockAlign = 0;
  let dataBytes = 0;
  must(ascii(bytes, 0) === 'RIFF' && ascii(bytes, 8) === 'WAVE', 'RIFF and WAVE');
  must(bytes.readUInt32LE(4) === bytes.length - 8, 'RIFF’s length');
  for (const { tag, at, length } of chunks(bytes, 12, bytes.length)) {
    if (tag === 'fmt ') blockAlign = bytes.readUInt16LE(at + 12);
    if (tag === 'data') dataBytes = length;
    if (tag === 'cue ') {
      const count = bytes.readUInt32LE(at);
      must(length === 4 + 24 * count, 'length of cue');
      for (let point = at + 4; point < at + length; point += 24) {
        const name = bytes.readUInt32LE(point);
        must(ascii(bytes, point + 8) === 'data', 'fccChunk');
        must(
          bytes.readUInt32LE(point + 12) === 0 && bytes.readUInt32LE(point + 16) === 0,
          'starts of one chunk',
        );
        must(
          bytes.readUInt32LE(point + 4) === bytes.readUInt32LE(point + 20),
          'dwPosition and dwSampleOffset',
        );
        must(!points.has(name), 'dwName, once each');
        points.set(name, bytes.readUInt32LE(point + 20));
      }
    }
    if (tag === 'LIST' && ascii(bytes, at) === 'adtl') {
      for (const label of chunks(bytes, at + 4, at + length)) {
        must(label.tag === 'labl', 'labl');
        const text = bytes.toString('latin1', label.at + 4, label.at + label.length);
        must(text.indexOf('\0') === text.length - 1, 'zero at the end of a label, and only there');
        labels.set(bytes.readUInt32LE(label.at), text.slice(0, -1));
      }
    }
  }
  const names = [...points.keys()].sort((one, other) => one - other);
  return {
    frames: dataBytes / blockAlign,
    cues: names.map((name) => ({ frame: points.get(name) ?? NaN, label: labels.get(name) })),
  };
}

function* chunks(bytes: Buffer, start: number, end: number) {
  let at = start;
  while (at < end) {
    const length = bytes.readUInt32LE(at + 4);
    must(at + 8 + length <= end, `length of ${ascii(bytes, at)}`);
    yield { tag: ascii(bytes, at), at: at + 8, length };
    at += 8 + length + (length % 2);
  }
  must(at === end, 'padding');
}

const ascii = (bytes: Buffer, at: number): string => bytes.toString('latin1', at, at + 4);

function must(isSo: boolean, what: string): void {
  if (!isSo) throw new Error(`not as specified: ${what}`);
}
