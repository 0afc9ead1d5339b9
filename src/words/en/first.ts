import { waitsFor, hold, noSound, captureFailure } from './capture.ts';
import { stepLabels, stepNames, captureTrust, markDoubt } from './captureTrust.ts';
import { endsShort, endsLong } from './columnEnds.ts';
import { found } from './found.ts';
import { gasNames, fillingNames } from './gasNames.ts';
import { listening, unheardFrequency } from './listening.ts';
import { linkFault } from './linkFault.ts';
import { mouthNames } from './mouths.ts';
import { capture, processingFlag, trustPart } from './page/capture.ts';
import { columnLabels, columnSpoken } from './page/columnPicture.ts';
import { field } from './page/fields.ts';
import { columnFault } from './columnFaults.ts';
import { mended } from './mended.ts';
import { parseFault } from './parseFaults.ts';
import { reading } from './readings.ts';
import { recordFault } from './recordFaults.ts';
import { keepingFault, notLoaded } from './records.ts';
import { storageFault } from './storageFaults.ts';
import { frame, failed } from './page/frame.ts';
import { lengthAnswer } from './page/lengthCheck.ts';
import { keepingBar } from './page/keepingBar.ts';
import { marks, markRow, result, doubts } from './page/measure.ts';
import { practice, guide } from './page/practice.ts';
import { source, now, drawn, readout, wayBack, task } from './page/stage.ts';
import { stageLine } from './page/stageLine.ts';
import { stripLabels, stripSpoken } from './page/strip.ts';
import { pageFault } from './pageFaults.ts';
import { recordingFault } from './recordingFaults.ts';
import { resonanceWhy } from './resonances.ts';
import { soundChannel } from './soundChannel.ts';
import { tooLong } from './records.ts';
import { experimentTitle } from './titles.ts';
import { readingTaken } from './readingTaken.ts';
import { nextMark } from './nextMarks.ts';
import { resultFact } from './result.ts';
import { groupName } from './page/groupName.ts';
import { outlierCause } from './outlierCauses.ts';

/** What the page says from the start, in English. */
export const first = {
  outlierCause,
  groupName,
  readingTaken,
  waitsFor,
  hold,
  noSound,
  experimentTitle,
  captureFailure,
  stepLabels,
  stepNames,
  captureTrust,
  markDoubt,
  listening,
  unheardFrequency,
  soundChannel,
  recordingFault,
  resonanceWhy,
  found,
  lengthAnswer,
  processingFlag,
  endsShort,
  endsLong,
  gasNames,
  fillingNames,
  mouthNames,
  capture,
  trustPart,
  columnLabels,
  columnSpoken,
  field,
  frame,
  failed,
  keepingBar,
  marks,
  markRow,
  result,
  doubts,
  practice,
  nextMark,
  resultFact,
  columnFault,
  keepingFault,
  mended,
  notLoaded,
  parseFault,
  reading,
  recordFault,
  storageFault,
  guide,
  source,
  now,
  drawn,
  readout,
  stageLine,
  wayBack,
  task,
  stripLabels,
  stripSpoken,
  pageFault,
  tooLong,
  linkFault,
};
