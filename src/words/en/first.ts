/*
 * What the page says from the start, in English.
 */

export { waitsFor, hold, noSound, captureFailure } from './capture.ts';
export { stepLabels, stepNames, captureTrust, markDoubt } from './captureTrust.ts';
export { endsShort, endsLong } from './columnEnds.ts';
export { columnFault } from './columnFaults.ts';
export { found } from './found.ts';
export { gasNames, fillingNames } from './gasNames.ts';
export { linkFault } from './linkFault.ts';
export { listening, unheardFrequency } from './listening.ts';
export { markFacts } from './marks.ts';
export { mended } from './mended.ts';
export { mouthNames } from './mouths.ts';
export { nextMark } from './nextMarks.ts';
export { notice } from './notices.ts';
export { outlierCause } from './outlierCauses.ts';
export { pageFault } from './pageFaults.ts';
export { parseFault } from './parseFaults.ts';
export { readingTaken } from './readingTaken.ts';
export { reading } from './readings.ts';
export { recordFault } from './recordFaults.ts';
export { recordingFault } from './recordingFaults.ts';
export { tooLong, keepingFault, notLoaded } from './records.ts';
export { resonanceWhy } from './resonances.ts';
export { resultFact } from './result.ts';
export { soundChannel } from './soundChannel.ts';
export { undoStep } from './steps.ts';
export { storageFault } from './storageFaults.ts';
export { age } from './times.ts';
export { experimentTitle } from './titles.ts';
export { tube } from './page/apparatus.ts';
export { capture, processingFlag, trustPart } from './page/capture.ts';
export { columnLabels, columnSpoken } from './page/columnPicture.ts';
export { field } from './page/fields.ts';
export { frame, failed } from './page/frame.ts';
export { groupName } from './page/groupName.ts';
export { keepingBar } from './page/keepingBar.ts';
export { lengthAnswer } from './page/lengthCheck.ts';
export { marks, markRow, result, doubts } from './page/measure.ts';
export { pages } from './page/pages.ts';
export { practice, guide } from './page/practice.ts';
export { source, now, drawn, readout, wayBack, task } from './page/stage.ts';
export { stageLine } from './page/stageLine.ts';
export { stripLabels, stripSpoken } from './page/strip.ts';
export { working, budget } from './page/working.ts';
