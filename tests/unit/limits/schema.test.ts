import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { LIMITS } from '../../../src/limits/limits.ts';
import type { Limit } from '../../../src/limits/limits.ts';
import { LONGEST } from '../../../src/limits/longest.ts';

interface Node {
  readonly properties?: Readonly<Record<string, Node>>;
  readonly $defs?: Readonly<Record<string, Node>>;
  readonly items?: Node;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly maxLength?: number;
  readonly maxItems?: number;
}

const folder = resolve(import.meta.dirname, '../../../public/schema');
const read = (name: string): Node => JSON.parse(readFileSync(resolve(folder, name), 'utf8')) as Node;

/** Every part of a schema that limits something, as the way to it. */
function limited(node: Node, way = ''): [string, Node][] {
  const own: [string, Node][] = ['minimum', 'maximum', 'maxLength', 'maxItems'].some((key) => key in node)
    ? [[way, node]]
    : [];
  const inner = Object.entries({ ...node.properties, ...node.$defs }).flatMap(([name, part]) =>
    limited(part, `${way}.${name}`),
  );
  return [...own, ...inner, ...(node.items === undefined ? [] : limited(node.items, `${way}[]`))];
}

const NUMBERS: Readonly<Record<string, Limit>> = {
  '.origin.number': LIMITS.originNumber,
  '.origin.copy': LIMITS.copyNumber,
  '.tube.diameterM': LIMITS.diameterM,
  '.tube.otherDiameterM': LIMITS.diameterM,
  '.tube.travelM': LIMITS.travelM,
  '.rule.readingStandardUncertaintyM': LIMITS.readingStandardUncertaintyM,
  '.rule.zeroOffsetM': LIMITS.zeroOffsetM,
  '.gainCheck.departureDb': LIMITS.gainDepartureDb,
  '.gainCheck.limitDb': LIMITS.gainDepartureDb,
  '.fork.nominalHz': LIMITS.stampedHz,
  '.fork.standardUncertaintyHz': LIMITS.forkStandardUncertaintyHz,
  '.fork.measuredHz': LIMITS.pitchHz,
  '.fork.measuredStandardUncertaintyHz': LIMITS.forkStandardUncertaintyHz,
  '.place.temperatureC': LIMITS.temperatureC,
  '.place.temperatureStandardUncertaintyC': LIMITS.temperatureStandardUncertaintyC,
  '.place.humidityPct': LIMITS.humidityPct,
  '.place.co2MoleFraction': LIMITS.co2MoleFraction,
  '.place.pressurePa': LIMITS.pressurePa,
  '.mark.lengthM': LIMITS.lengthM,
  '.mark.otherLengthM': LIMITS.lengthM,
  '.mark.order': LIMITS.order,
  '.mark.evidence.timeS': LIMITS.timeS,
  '.mark.evidence.riseDb': LIMITS.riseDb,
  '.mark.evidence.aboveRoomDb': LIMITS.riseDb,
  '.mark.evidence.confidence': LIMITS.confidence,
  '.mark.evidence.frequencyHz': LIMITS.pitchHz,
  '.mark.evidence.frequencyStandardUncertaintyHz': LIMITS.forkStandardUncertaintyHz,
  '.mark.evidence.centre.timeS': LIMITS.timeS,
  '.mark.evidence.centre.standardUncertaintyHalfWidths': LIMITS.centreStandardUncertaintyHalfWidths,
  '.mark.evidence.centre.shareRe': LIMITS.centreShare,
  '.mark.evidence.centre.shareIm': LIMITS.centreShare,
  '.mark.evidence.trace.startS': LIMITS.timeS,
  '.mark.evidence.trace.stepS': LIMITS.traceStepS,
  '.mark.evidence.trace.toneDb[]': LIMITS.traceDb,
  '.mark.evidence.trace.roomDb[]': LIMITS.traceDb,
};

const TEXTS: Readonly<Record<string, number>> = {
  '.title': LONGEST.title,
  '.note': LONGEST.note,
  '.group': LONGEST.name,
  '.className': LONGEST.name,
  '.lesson.task': LONGEST.task,
  '.lesson.reveal': LONGEST.lessonKey,
  '.lesson.language': LONGEST.lessonKey,
  '.gainCheck.device': LONGEST.device,
  '.place.name': LONGEST.name,
  '.mark.note': LONGEST.markNote,
  '.mark.evidence.reason': LONGEST.reason,
};

describe('the published schema of an experiment', () => {
  const parts = limited(read('experiment.schema.json'));

  it('has the table’s numbers', () => {
    const found = parts
      .filter(([, { minimum, maximum }]) => minimum !== undefined || maximum !== undefined)
      .map(([way, { minimum, maximum }]) => [way, { lowest: minimum, highest: maximum }]);
    expect(Object.fromEntries(found)).toEqual(NUMBERS);
  });

  it('has the table’s longest texts', () => {
    const found = parts.filter(([, { maxLength }]) => maxLength !== undefined);
    for (const [way, { maxLength }] of found) {
      const isTime = /At$/.test(way);
      const isId = /[iI]d$|repeatOf$/.test(way);
      expect(maxLength, way).toBe(isTime ? LONGEST.time : isId ? LONGEST.id : TEXTS[way]);
    }
    expect(found.length).toBeGreaterThan(Object.keys(TEXTS).length);
  });

  it('has the table’s longest lists', () => {
    const found = parts.filter(([, { maxItems }]) => maxItems !== undefined);
    for (const [way, { maxItems }] of found) {
      expect(maxItems, way).toBe(/Db$/.test(way) ? LONGEST.trace : LONGEST.list);
    }
    expect(found.map(([way]) => way)).toEqual(
      expect.arrayContaining(['.forks', '.places', '.marks', '.deletedMarks']),
    );
  });
});

describe('the published schema of a class', () => {
  it('limits no quantity of its own: what it holds is worked out', () => {
    const withHighest = limited(read('class.schema.json')).filter(([, { maximum }]) => maximum !== undefined);
    expect(withHighest).toEqual([]);
  });
});
