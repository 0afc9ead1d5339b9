/** A WAV put together byte by byte, without the writer under test. */
export interface WavParts {
  readonly form?: string;
  readonly tag?: number;
  readonly channelCount?: number;
  readonly sampleRateHz?: number;
  readonly bytesPerFrame?: number;
  readonly bits?: number;
  /** Replaces the sub-format of the extensible form; its first two bytes are the real tag. */
  readonly subFormat?: number;
  readonly data: readonly number[];
  /** What the data chunk claims; its real length when absent. */
  readonly declaredLength?: number;
  readonly before?: readonly (readonly [tag: string, body: readonly number[]])[];
  readonly after?: readonly number[];
}

/** @returns a whole file, as in Microsoft's "Multimedia Programming Interface and Data Specifications 1.0", 1991 */
export function wavBytes(parts: WavParts): Uint8Array {
  const channelCount = parts.channelCount ?? 1;
  const bits = parts.bits ?? 16;
  const bytesPerFrame = parts.bytesPerFrame ?? (channelCount * bits) / 8;
  const rateHz = parts.sampleRateHz ?? 48_000;
  const fmt = [
    ...le(parts.tag ?? 1, 2),
    ...le(channelCount, 2),
    ...le(rateHz, 4),
    ...le(rateHz * bytesPerFrame, 4),
    ...le(bytesPerFrame, 2),
    ...le(bits, 2),
  ];
  if (parts.subFormat !== undefined) {
    // cbSize, valid bits, channel mask, then the GUID xxxxxxxx-0000-0010-8000-00AA00389B71.
    fmt.push(...le(22, 2), ...le(bits, 2), ...le(0, 4), ...le(parts.subFormat, 2));
    fmt.push(0, 0, 0, 0, 0x10, 0, 0x80, 0, 0, 0xaa, 0, 0x38, 0x9b, 0x71);
  }
  const chunks = [
    ...(parts.before ?? []).flatMap(([tag, body]) => chunk(tag, body)),
    ...chunk('fmt ', fmt),
    ...text('data'),
    ...le(parts.declaredLength ?? parts.data.length, 4),
    ...parts.data,
    ...(parts.after ?? []),
  ];
  return Uint8Array.from([
    ...text(parts.form ?? 'RIFF'),
    ...le(chunks.length + 4, 4),
    ...text('WAVE'),
    ...chunks,
  ]);
}

/** Little-endian bytes of an integer. */
export function le(value: number, bytes: number): number[] {
  return Array.from({ length: bytes }, (_, i) => Math.floor(value / 256 ** i) & 0xff);
}

function chunk(tag: string, body: readonly number[]): number[] {
  return [...text(tag), ...le(body.length, 4), ...body, ...(body.length % 2 === 1 ? [0] : [])];
}

function text(letters: string): number[] {
  return Array.from(letters, (letter) => letter.charCodeAt(0));
}
