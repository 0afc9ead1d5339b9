/** What a file is by its first bytes and its name. */
export type FileKind = 'text' | 'recording' | { readonly refused: OtherFile };

/** A file of a kind that can't be read here. */
export type OtherFile = 'archive' | 'oldDocument' | 'compressed' | 'pdf' | 'picture';

const SOUND_NAMES = /\.(wav|wave|m4a|mp3|ogg|oga|opus|webm|flac|aac|mp4|mov)$/i;
/** Beginnings of files that are often dropped by mistake. */
const KNOWN: readonly { readonly begins: string; readonly refused: OtherFile }[] = [
  { begins: 'PK\u0003\u0004', refused: 'archive' },
  { begins: '\u00d0\u00cf\u0011\u00e0', refused: 'oldDocument' },
  { begins: '\u001f\u008b', refused: 'compressed' },
  { begins: '%PDF', refused: 'pdf' },
  { begins: '\u0089PNG', refused: 'picture' },
  { begins: '\u00ff\u00d8\u00ff', refused: 'picture' },
];
const RIFF = /^(RIFF|RF64|BW64|RIFX)/;

/** @param head  the first bytes, 16 are enough  @param name  of the file  @param type  as the browser tells it */
export function fileKind(head: Uint8Array, name: string, type: string): FileKind {
  const beginning = String.fromCharCode(...head.subarray(0, 16));
  if (RIFF.test(beginning) || SOUND_NAMES.test(name) || /^(audio|video)\//.test(type)) return 'recording';
  return KNOWN.find(({ begins }) => beginning.startsWith(begins)) ?? 'text';
}
