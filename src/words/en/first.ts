import { waitsFor, hold, noSound, captureFailure } from './capture.ts';
import { stepLabels, stepNames, captureTrust, markDoubt } from './captureTrust.ts';
import { endsShort, endsLong } from './columnEnds.ts';
import { columnFault } from './columnFaults.ts';
import { found } from './found.ts';
import { gasNames, fillingNames } from './gasNames.ts';
import { linkFault } from './linkFault.ts';
import { listening, unheardFrequency } from './listening.ts';
import { markFacts } from './marks.ts';
import { mended } from './mended.ts';
import { mouthNames } from './mouths.ts';
import { nextMark } from './nextMarks.ts';
import { notice } from './notices.ts';
import { outlierCause } from './outlierCauses.ts';
import { pageFault } from './pageFaults.ts';
import { parseFault } from './parseFaults.ts';
import { readingTaken } from './readingTaken.ts';
import { reading } from './readings.ts';
import { recordFault } from './recordFaults.ts';
import { recordingFault } from './recordingFaults.ts';
import { tooLong, keepingFault, notLoaded } from './records.ts';
import { resonanceWhy } from './resonances.ts';
import { resultFact } from './result.ts';
import { soundChannel } from './soundChannel.ts';
import { undoStep } from './steps.ts';
import { storageFault } from './storageFaults.ts';
import { age } from './times.ts';
import { experimentTitle } from './titles.ts';
import { tube } from './page/apparatus.ts';
import { capture, processingFlag, trustPart } from './page/capture.ts';
import { columnLabels, columnSpoken } from './page/columnPicture.ts';
import { field } from './page/fields.ts';
import { frame, failed } from './page/frame.ts';
import { groupName } from './page/groupName.ts';
import { keepingBar } from './page/keepingBar.ts';
import { lengthAnswer } from './page/lengthCheck.ts';
import { marks, markRow, result, doubts } from './page/measure.ts';
import { pages } from './page/pages.ts';
import { practice, guide } from './page/practice.ts';
import { source, now, drawn, readout, wayBack, task } from './page/stage.ts';
import { stageLine } from './page/stageLine.ts';
import { stripLabels, stripSpoken } from './page/strip.ts';
import { working, budget } from './page/working.ts';

/** What the page says from the start, in English. */
export const first = {
  waitsFor,
  hold,
  noSound,
  captureFailure,
  stepLabels,
  stepNames,
  captureTrust,
  markDoubt,
  endsShort,
  endsLong,
  columnFault,
  found,
  gasNames,
  fillingNames,
  linkFault,
  listening,
  unheardFrequency,
  markFacts,
  mended,
  mouthNames,
  nextMark,
  notice,
  outlierCause,
  pageFault,
  parseFault,
  readingTaken,
  reading,
  recordFault,
  recordingFault,
  tooLong,
  keepingFault,
  notLoaded,
  resonanceWhy,
  resultFact,
  soundChannel,
  undoStep,
  storageFault,
  age,
  experimentTitle,
  tube,
  capture,
  processingFlag,
  trustPart,
  columnLabels,
  columnSpoken,
  field,
  frame,
  failed,
  groupName,
  keepingBar,
  lengthAnswer,
  marks,
  markRow,
  result,
  doubts,
  pages,
  practice,
  guide,
  source,
  now,
  drawn,
  readout,
  wayBack,
  task,
  stageLine,
  stripLabels,
  stripSpoken,
  working,
  budget,
};
