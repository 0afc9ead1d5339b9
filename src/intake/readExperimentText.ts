import { readExperiment } from '../notebook/readExperiment.ts';
import { DEEPEST_JSON } from './intakeLimits.ts';
import type { Intake, IntakeFault } from './intakeTypes.ts';
import { jsonDepth } from './jsonDepth.ts';

type Fields = Record<string, unknown>;

/** Lists whose single items may be left out. */
const LISTS = ['marks', 'deletedMarks', 'forks', 'places'] as const;
const ITEM = new RegExp(`^(${LISTS.join('|')})\\[(\\d+)\\]`);
const DANGLING = /^mark (.*): there is no (fork|place) “/s;
/** What a class's result calls itself, as public/schema/class.schema.json has it. */
const CLASS_SCHEMA = /^urn:air-column-bench:class:/;
/** A mark may name a fork that was left out for a fault of its own. */
const MOST_ROUNDS = 4;

/** Reads JSON text as an experiment. Where single items are faulty, the experiment without them is the good part. */
export function readExperimentText(name: string, text: string): Intake {
  const refuse = (message: string): Intake => ({
    name,
    content: null,
    faults: [{ row: null, column: null, message }],
    remarks: [],
  });
  if (jsonDepth(text, DEEPEST_JSON) > DEEPEST_JSON) {
    return refuse('The file is nested far deeper than any experiment: it is something else.');
  }
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return refuse(`The file isn’t whole JSON: ${reason}. Save it again from the bench.`);
  }
  if (CLASS_SCHEMA.test(String((value as Fields | null)?.['$schema']))) {
    return refuse(
      'This is the result of a whole class: it holds no marks. Open the groups’ own files, or the class’s CSV file.',
    );
  }
  const reading = readExperiment(value);
  if (reading.kind === 'experiment') {
    return { name, content: { kind: 'experiment', experiment: reading.experiment }, faults: [], remarks: [] };
  }
  const faults = reading.faults.map(located);
  const rest = withoutFaulty(value, reading.faults);
  return {
    name,
    content: rest === null ? null : { kind: 'experiment', experiment: rest },
    faults,
    remarks: [],
  };
}

/** "marks[3].lengthM must be…" apart into the field and what is said of it. */
function located(fault: string): IntakeFault {
  const match = /^([\w.[\]]+) (must .*)$/s.exec(fault);
  return match === null
    ? { row: null, column: null, message: fault }
    : { row: null, column: match[1] ?? null, message: match[2] ?? fault };
}

/** The experiment without its faulty items; null where something else is wrong, or nothing is left. */
function withoutFaulty(value: unknown, firstFaults: readonly string[]) {
  let fields = { ...(value as Fields) };
  let faults = firstFaults;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const bad = new Map(LISTS.map((list) => [list as string, new Set<number>()]));
    const badMarks = new Set<string>();
    for (const fault of faults) {
      const item = ITEM.exec(fault);
      const dangling = DANGLING.exec(fault);
      if (item !== null) bad.get(item[1] ?? '')?.add(Number(item[2]));
      else if (dangling !== null) badMarks.add(dangling[1] ?? '');
      else return null;
    }
    for (const list of LISTS) {
      const items = fields[list];
      if (!Array.isArray(items)) return null;
      const isMarks = list === 'marks' || list === 'deletedMarks';
      const kept = items.filter(
        (item: unknown, index) =>
          bad.get(list)?.has(index) !== true &&
          !(isMarks && badMarks.has(String((item as Fields | null)?.['id']))),
      );
      fields = { ...fields, [list]: kept };
    }
    const reading = readExperiment(fields);
    if (reading.kind === 'experiment') return reading.experiment.marks.length > 0 ? reading.experiment : null;
    faults = reading.faults;
  }
  return null;
}
