/** What a file is by its first bytes and its name. */
export type FileKind = 'text' | 'recording' | { readonly refused: string };

const SOUND_NAMES = /\.(wav|wave|m4a|mp3|ogg|oga|opus|webm|flac|aac|mp4|mov)$/i;
const AS_CSV = 'Save it as CSV there and open that.';
/** Beginnings of files that are often dropped by mistake. */
const KNOWN: readonly { readonly begins: string; readonly refused: string }[] = [
  {
    begins: 'PK\u0003\u0004',
    refused: `This is a spreadsheet's own file or a ZIP archive, which isn’t opened here. ${AS_CSV}`,
  },
  { begins: '\u00d0\u00cf\u0011\u00e0', refused: `This is an old spreadsheet or document. ${AS_CSV}` },
  { begins: '\u001f\u008b', refused: 'This file is compressed. Unpack it first.' },
  {
    begins: '%PDF',
    refused: 'This is a PDF. Numbers can’t be read from it: open the table it was made from.',
  },
  { begins: '\u0089PNG', refused: 'This is a picture. Numbers can’t be read from it.' },
  { begins: '\u00ff\u00d8\u00ff', refused: 'This is a picture. Numbers can’t be read from it.' },
];
const RIFF = /^(RIFF|RF64|BW64|RIFX)/;

/** @param head  the first bytes, 16 are enough  @param name  of the file  @param type  as the browser tells it */
export function fileKind(head: Uint8Array, name: string, type: string): FileKind {
  const beginning = String.fromCharCode(...head.subarray(0, 16));
  if (RIFF.test(beginning) || SOUND_NAMES.test(name) || /^(audio|video)\//.test(type)) return 'recording';
  return KNOWN.find(({ begins }) => beginning.startsWith(begins)) ?? 'text';
}
