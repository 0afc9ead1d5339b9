import type { Intake } from '../intake/intakeTypes.ts';
import { markIndex, ownMarks } from '../notebook/markList.ts';
import type { MarkRow } from '../marks/markRow.ts';
import type { Experiment } from '../notebook/experiment.ts';
import { measuredMarks } from '../notebook/measuredMarks.ts';
import { solverMarks } from '../session/experiment/solverMarks.ts';
import { marksOfRows } from '../solver/marksOfRows.ts';
import { unnamedGroupWords } from '../words/classroom.ts';
import { shortId } from '../notebook/groupLink.ts';
import type { GroupSource } from './classGroup.ts';

/** The groups in what was read from one file: a table may hold many. Empty for a recording or where nothing was read. */
export function groupsOfIntake(intake: Intake): readonly GroupSource[] {
  const { content, name } = intake;
  const fileName = name;
  const stem = name.replace(/\.(json|csv|tsv|txt)$/i, '');
  switch (content?.kind) {
    case 'experiment':
      return [groupOfExperiment(content.experiment, fileName, stem)];
    case 'table':
      return groupsOfRows(content.rows, fileName, stem);
    case 'results':
      return content.results.map((stated, index) => ({
        name: stated.group === '' ? unnamedGroupWords(stem, index + 1) : stated.group,
        isNamed: stated.group !== '',
        fileName,
        experimentId: null,
        changedAt: '',
        marks: [],
        numbered: 'row',
        markNumbers: new Map(),
        stated,
      }));
    default:
      return [];
  }
}

function groupOfExperiment(experiment: Experiment, fileName: string, stem: string): GroupSource {
  // What a group calls itself comes before the title, which may be the lesson’s.
  const named = experiment.group.trim() || experiment.title.trim();
  const isNamed = named !== '';
  const numbers = markIndex(experiment);
  return {
    name: isNamed ? named : stem,
    isNamed,
    fileName,
    experimentId: shortId(experiment.id),
    changedAt: experiment.changedAt,
    marks: solverMarks(
      experiment,
      measuredMarks(experiment).filter((mark) => !mark.excluded),
    ),
    numbered: 'mark',
    markNumbers: new Map(ownMarks(experiment.marks).map(({ id }) => [id, numbers.numberOf(id)])),
    stated: null,
  };
}

function groupsOfRows(rows: readonly MarkRow[], fileName: string, stem: string): readonly GroupSource[] {
  const byGroup = new Map<string, MarkRow[]>();
  for (const row of rows) {
    if (row.excluded) continue;
    const there = byGroup.get(row.group);
    if (there === undefined) byGroup.set(row.group, [row]);
    else there.push(row);
  }
  return [...byGroup].map(([group, own]) => ({
    name: group === '' ? stem : group,
    isNamed: group !== '',
    fileName,
    experimentId: null,
    changedAt:
      own
        .map(({ madeAt }) => madeAt)
        .sort()
        .at(-1) ?? '',
    marks: marksOfRows(own),
    numbered: 'row',
    markNumbers: new Map(own.map(({ row }) => [String(row), row])),
    stated: null,
  }));
}
