import { budgetColumns, budgetLine } from './budgetLines.ts';
import { spreadPicture } from './classroom.ts';
import { classTemperatures } from './classTemperatures.ts';
import { classDiscussion, classGroup, classResult, sameGroup, spreadPicture } from './classroom.ts';
import { groupReason } from './groupReasons.ts';
import { practiceTruth } from './practiceTruth.ts';
import { tubeName } from './tubeNames.ts';
import { listOfSome } from './report/listOfSome.ts';
import { lessonFault } from './lessonLink.ts';
import { mouthFacts } from './mouths.ts';
import { otherFile, intakeFault, intakeRemark } from './intakeFaults.ts';
import { tube, mouthChoice, forks, places } from './page/apparatus.ts';
import { bringIn } from './page/bringIn.ts';
import { check, checkLength, gainCheck, soundCheck, tone, sweepCard } from './page/check.ts';
import { gainAnswer } from './page/gainCheck.ts';
import { soundFact, forkFinding } from './page/soundCheck.ts';
import { classPage, codeTaken, camera } from './page/class.ts';
import { code } from './page/code.ts';
import { compare, temperatures, ends, turned } from './page/compare.ts';
import { comparison } from './comparison.ts';
import { sweep } from './sweep.ts';
import { turnRound } from './turnRound.ts';
import { handIn } from './page/handIn.ts';
import { homeScreen } from './page/homeScreen.ts';
import { pastedName } from './intakeFaults.ts';
import { tableFault } from './tableFaults.ts';
import { clipboard } from './page/clipboard.ts';
import { intakeContent, intakePage, takenTable, usableFiles } from './page/intake.ts';
import { keys } from './page/keys.ts';
import { leaving } from './page/leaving.ts';
import { lesson, keptBack } from './page/lesson.ts';
import { administratorHelp, benchHelp, microphone } from './page/microphone.ts';
import { partNames } from './page/partNames.ts';
import { pages, list } from './page/pages.ts';
import { practiceReading, practiceTruth } from './practiceTruth.ts';
import { picture } from './page/picture.ts';
import { records, experiments, files, tables, tableKinds, sounds, stored } from './page/records.ts';
import { reportPage } from './page/report.ts';
import { working, budget, fit, nextMarks, circle } from './page/working.ts';
import { drawing } from './report/apparatusDrawing.ts';
import { circlePlot } from './report/circlePlot.ts';
import { endPlot } from './report/endPlot.ts';
import { fitPlot, residualPlot } from './report/fitPlot.ts';
import {
  report,
  resultPart,
  placePart,
  warningsPart,
  apparatusFacts,
  apparatusPart,
  marksPart,
  methodPart,
  comparisonPart,
} from './report/labReport.ts';
import { questions } from './report/questions.ts';
import { readingHelp } from './report/readingHelp.ts';
import { sweepPlot } from './report/sweepPlot.ts';
import { temperaturePlot } from './report/temperaturePlot.ts';
import { namelessGroup } from './namelessGroup.ts';
import { solverWarning, unusableMark } from './solverWarnings.ts';
import { workingStep } from './workingSteps.ts';
import { workingWhy } from './whySteps.ts';

/** What the page says once more of it is opened, and the command line, in English. */
export const later = {
  workingWhy,
  workingStep,
  solverWarning,
  unusableMark,
  namelessGroup,
  budgetColumns,
  budgetLine,
  spreadPicture,
  classResult,
  classGroup,
  sameGroup,
  groupReason,
  classDiscussion,
  practiceTruth,
  tubeName,
  listOfSome,
  otherFile,
  intakeFault,
  intakeRemark,
  pastedName,
  tableFault,
  tube,
  mouthChoice,
  forks,
  places,
  bringIn,
  check,
  checkLength,
  gainCheck,
  soundCheck,
  tone,
  sweepCard,
  gainAnswer,
  soundFact,
  forkFinding,
  classPage,
  classTemperatures,
  codeTaken,
  camera,
  code,
  compare,
  temperatures,
  ends,
  turned,
  comparison,
  turnRound,
  sweep,
  handIn,
  homeScreen,
  intakePage,
  intakeContent,
  usableFiles,
  takenTable,
  clipboard,
  keys,
  leaving,
  lesson,
  keptBack,
  microphone,
  benchHelp,
  administratorHelp,
  partNames,
  lessonFault,
  mouthFacts,
  questions,
  readingHelp,
  pages,
  list,
  picture,
  practiceTruth,
  practiceReading,
  records,
  experiments,
  files,
  tables,
  tableKinds,
  sounds,
  stored,
  reportPage,
  working,
  budget,
  fit,
  nextMarks,
  circle,
  drawing,
  circlePlot,
  endPlot,
  fitPlot,
  residualPlot,
  sweepPlot,
  temperaturePlot,
};
