/*
 * What the page says once more of it is opened, in German.
 */

export { budgetColumns, budgetLine } from './budgetLines.ts';
export { classTemperatures } from './classTemperatures.ts';
export { classResult, classGroup, sameGroup, classDiscussion, spreadPicture } from './classroom.ts';
export { comparison } from './comparison.ts';
export { groupReason } from './groupReasons.ts';
export { pastedName, otherFile, intakeFault, intakeRemark } from './intakeFaults.ts';
export { lessonFault } from './lessonLink.ts';
export { mouthFacts } from './mouths.ts';
export { namelessGroup } from './namelessGroup.ts';
export { practiceTruth, practiceReading } from './practiceTruth.ts';
export { solverWarning, unusableMark } from './solverWarnings.ts';
export { sweep } from './sweep.ts';
export { tableFault } from './tableFaults.ts';
export { tubeName } from './tubeNames.ts';
export { turnRound } from './turnRound.ts';
export { workingWhy } from './whySteps.ts';
export { workingStep } from './workingSteps.ts';
export { tube, mouthChoice, forks, places } from './page/apparatus.ts';
export { bringIn } from './page/bringIn.ts';
export { check, checkLength, gainCheck, soundCheck, tone, sweepCard } from './page/check.ts';
export { classPage, codeTaken, camera } from './page/class.ts';
export { clipboard } from './page/clipboard.ts';
export { code } from './page/code.ts';
export { compare, temperatures, ends, turned } from './page/compare.ts';
export { gainAnswer } from './page/gainCheck.ts';
export { handIn } from './page/handIn.ts';
export { homeScreen } from './page/homeScreen.ts';
export { intakePage, intakeContent, usableFiles, takenTable } from './page/intake.ts';
export { keys } from './page/keys.ts';
export { leaving } from './page/leaving.ts';
export { lesson, keptBack } from './page/lesson.ts';
export { microphone, benchHelp, administratorHelp } from './page/microphone.ts';
export { pages, list } from './page/pages.ts';
export { partNames } from './page/partNames.ts';
export { picture } from './page/picture.ts';
export { records, experiments, files, tables, tableKinds, sounds, stored } from './page/records.ts';
export { reportPage } from './page/report.ts';
export { soundFact, forkFinding } from './page/soundCheck.ts';
export { working, budget, fit, nextMarks, circle } from './page/working.ts';
export { drawing } from './report/apparatusDrawing.ts';
export { circlePlot } from './report/circlePlot.ts';
export { endPlot } from './report/endPlot.ts';
export { fitPlot, residualPlot } from './report/fitPlot.ts';
export {
  report,
  resultPart,
  placePart,
  warningsPart,
  apparatusPart,
  apparatusFacts,
  methodPart,
  marksPart,
  comparisonPart,
} from './report/labReport.ts';
export { listOfSome } from './report/listOfSome.ts';
export { questions } from './report/questions.ts';
export { readingHelp } from './report/readingHelp.ts';
export { sweepPlot } from './report/sweepPlot.ts';
export { temperaturePlot } from './report/temperaturePlot.ts';
