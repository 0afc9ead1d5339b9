import { bytesOfBlob } from '../capture/wav/bytesOfBlob.ts';
import { WavError } from '../capture/wav/wavFormat.ts';
import { inFull } from '../words/faultWords.ts';
import { laterWords } from '../words/inUse.ts';
import { recordingFaultWords } from '../words/recordingFaults.ts';
import { WavReader } from '../capture/wav/wavReader.ts';
import { decodeText } from './decodeText.ts';
import { fileKind } from './fileKind.ts';
import { LARGEST_JSON_BYTES, LARGEST_TABLE_BYTES } from '../limits/sizes.ts';
import type { Intake } from './intakeTypes.ts';
import { readExperimentText } from './readExperimentText.ts';
import { readTableText } from './readTableText.ts';

const HEAD_BYTES = 16;

/**
 * Reads whatever was chosen or dropped: an experiment (JSON), a table (CSV) or a recording, told apart by its content.
 * What is far too large is refused before it is read. Never throws.
 * @param file  its name is for the messages
 */
export async function readFile(file: Blob & { readonly name: string }): Promise<Intake> {
  const { name } = file;
  try {
    if (file.size === 0) return refused(name, laterWords.intakeFault.empty);
    const head = new Uint8Array(await file.slice(0, HEAD_BYTES).arrayBuffer());
    const kind = fileKind(head, name, file.type);
    if (kind === 'recording') return await readRecording(file);
    if (kind !== 'text') return refused(name, laterWords.otherFile[kind.refused]);
    const isJson =
      /\.json$/i.test(name) || /^(\ufeff|\u00ef\u00bb\u00bf)?\s*[{[]/.test(String.fromCharCode(...head));
    const largest = isJson ? LARGEST_JSON_BYTES : LARGEST_TABLE_BYTES;
    if (file.size > largest) {
      const { largeExperiment, largeTable } = laterWords.intakeFault;
      return refused(name, (isJson ? largeExperiment : largeTable)(file.size, largest));
    }
    return readText(name, decodeText(new Uint8Array(await file.arrayBuffer())), isJson);
  } catch {
    return refused(name, laterWords.intakeFault.unreadable);
  }
}

function readText(name: string, text: string, isJson: boolean): Intake {
  return isJson ? readExperimentText(name, text.replace(/^\ufeff/, '')) : readTableText(name, text, null);
}

/** A recording is only looked at: it is heard block by block later. */
async function readRecording(file: Blob & { readonly name: string }): Promise<Intake> {
  const take: Intake = { name: file.name, content: { kind: 'recording' }, faults: [], remarks: [] };
  try {
    await WavReader.open(bytesOfBlob(file), file.size);
    return take;
  } catch (error) {
    if (!(error instanceof WavError)) throw error;
    // The browser may know codings that are not known here.
    return error.isWav && error.code !== 'not-audio'
      ? refused(file.name, inFull(recordingFaultWords(error.fault)))
      : take;
  }
}

function refused(name: string, message: string): Intake {
  return { name, content: null, faults: [{ row: null, column: null, message }], remarks: [] };
}
