import type { LaterWords } from '../catalogue.ts';
import { budgetColumns, budgetLine } from './budgetLines.ts';
import { classTemperatures } from './classTemperatures.ts';
import { classResult, classGroup, sameGroup, classDiscussion, spreadPicture } from './classroom.ts';
import { comparison } from './comparison.ts';
import { groupReason } from './groupReasons.ts';
import { pastedName, otherFile, intakeFault, intakeRemark } from './intakeFaults.ts';
import { lessonFault } from './lessonLink.ts';
import { mouthFacts } from './mouths.ts';
import { namelessGroup } from './namelessGroup.ts';
import { practiceTruth, practiceReading } from './practiceTruth.ts';
import { solverWarning, unusableMark } from './solverWarnings.ts';
import { sweep } from './sweep.ts';
import { tableFault } from './tableFaults.ts';
import { tubeName } from './tubeNames.ts';
import { turnRound } from './turnRound.ts';
import { workingWhy } from './whySteps.ts';
import { workingStep } from './workingSteps.ts';
import { tube, mouthChoice, forks, places } from './page/apparatus.ts';
import { bringIn } from './page/bringIn.ts';
import { check, checkLength, gainCheck, soundCheck, tone, sweepCard } from './page/check.ts';
import { classPage, codeTaken, camera } from './page/class.ts';
import { clipboard } from './page/clipboard.ts';
import { code } from './page/code.ts';
import { compare, temperatures, ends, turned } from './page/compare.ts';
import { gainAnswer } from './page/gainCheck.ts';
import { handIn } from './page/handIn.ts';
import { homeScreen } from './page/homeScreen.ts';
import { intakePage, intakeContent, usableFiles, takenTable } from './page/intake.ts';
import { keys } from './page/keys.ts';
import { leaving } from './page/leaving.ts';
import { lesson, keptBack } from './page/lesson.ts';
import { microphone, benchHelp, administratorHelp } from './page/microphone.ts';
import { pages, list } from './page/pages.ts';
import { partNames } from './page/partNames.ts';
import { picture } from './page/picture.ts';
import { records, experiments, files, tables, tableKinds, sounds, stored } from './page/records.ts';
import { reportPage } from './page/report.ts';
import { soundFact, forkFinding } from './page/soundCheck.ts';
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
  apparatusPart,
  apparatusFacts,
  methodPart,
  marksPart,
  comparisonPart,
} from './report/labReport.ts';
import { listOfSome } from './report/listOfSome.ts';
import { questions } from './report/questions.ts';
import { readingHelp } from './report/readingHelp.ts';
import { sweepPlot } from './report/sweepPlot.ts';
import { temperaturePlot } from './report/temperaturePlot.ts';

/** What the page says once more of it is opened, in French. */
export const later: LaterWords = {
  budgetColumns,
  budgetLine,
  classTemperatures,
  classResult,
  classGroup,
  sameGroup,
  classDiscussion,
  spreadPicture,
  comparison,
  groupReason,
  pastedName,
  otherFile,
  intakeFault,
  intakeRemark,
  lessonFault,
  mouthFacts,
  namelessGroup,
  practiceTruth,
  practiceReading,
  solverWarning,
  unusableMark,
  sweep,
  tableFault,
  tubeName,
  turnRound,
  workingWhy,
  workingStep,
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
  classPage,
  codeTaken,
  camera,
  clipboard,
  code,
  compare,
  temperatures,
  ends,
  turned,
  gainAnswer,
  handIn,
  homeScreen,
  intakePage,
  intakeContent,
  usableFiles,
  takenTable,
  keys,
  leaving,
  lesson,
  keptBack,
  microphone,
  benchHelp,
  administratorHelp,
  pages,
  list,
  partNames,
  picture,
  records,
  experiments,
  files,
  tables,
  tableKinds,
  sounds,
  stored,
  reportPage,
  soundFact,
  forkFinding,
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
  report,
  resultPart,
  placePart,
  warningsPart,
  apparatusPart,
  apparatusFacts,
  methodPart,
  marksPart,
  comparisonPart,
  listOfSome,
  questions,
  readingHelp,
  sweepPlot,
  temperaturePlot,
};
