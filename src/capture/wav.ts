/** Reading and writing WAV files: pure code that serves the page, the command line and the tests alike. */
export { bytesOfBlob } from './wav/bytesOfBlob.ts';
export { decodeSamples } from './wav/decodeSamples.ts';
export { encodeWav } from './wav/encodeWav.ts';
export { encodeCues, readCues } from './wav/wavCues.ts';
export type { WavCue } from './wav/wavCues.ts';
export { WavError } from './wav/wavFormat.ts';
export type { WavFormat } from './wav/wavFormat.ts';
export { parseWavHeader } from './wav/wavHeader.ts';
export { WavReader } from './wav/wavReader.ts';
export type { FileRemark, ReadBytes } from './wav/wavReader.ts';
