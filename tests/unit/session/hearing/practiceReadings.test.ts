import { describe, expect, it } from 'vitest';
import type { MarkEvidence } from '../../../../src/marks/mark.ts';
import type { Experiment } from '../../../../src/notebook/experiment.ts';
import { PracticeRun } from '../../../../src/session/hearing/practiceRun.ts';
import { solveExperiment } from '../../../../src/session/experiment/solveExperiment.ts';
import {
  areReadingsNoted,
  isOfRealColumn,
  needsOwnPlace,
  noteReadings,
  PRACTICE_PLACE,
} from '../../../../src/session/hearing/practiceReadings.ts';
import { guideSteps } from '../../../../src/ui/stage/guideSteps.ts';
import { EXAMPLE_EVIDENCE, exampleExperiment, exampleMark } from '../../notebook/exampleExperiment.ts';

const heard = (source: MarkEvidence['source']): MarkEvidence => ({ ...EXAMPLE_EVIDENCE, source });
const fresh = exampleExperiment();
const { readings, deeds } = new PracticeRun(fresh, 1);
const note = (experiment: Experiment): Experiment => noteReadings(experiment, readings, 'practice-place');

/** An experiment of a real column 32 mm wide at 24 °C. */
const real: Experiment = {
  ...exampleExperiment([exampleMark('a', { lengthM: 0.158, evidence: heard('microphone') })]),
  tube: { diameterM: 0.032, otherDiameterM: null, mouth: null, stopper: 'piston', travelM: 1 },
  places: fresh.places.map((place) => ({ ...place, temperatureC: 24, humidityPct: 60, pressurePa: 98_000 })),
};

describe('readings of the practice bench', () => {
  it('fill what is empty in an experiment that begins with practice', () => {
    const noted = note(fresh);
    expect(noted.tube.diameterM).toBe(readings.diameterM);
    expect(noted.places).toMatchObject([{ name: 'Lab', temperatureC: 21, humidityPct: 45 }]);
    expect(areReadingsNoted(fresh, readings)).toBe(false);
    expect(areReadingsNoted(noted, readings)).toBe(true);
  });

  it('never change a tube or air that were noted: practice gets a place of its own', () => {
    expect(needsOwnPlace(real, readings)).toBe(true);
    const noted = note(real);
    expect(noted.tube).toEqual(real.tube);
    expect(noted.places[0]).toEqual(real.places[0]);
    expect(noted.places[1]).toMatchObject({ id: 'practice-place', name: PRACTICE_PLACE, temperatureC: 21 });
    expect(noted.present.placeId).toBe('practice-place');
    expect(areReadingsNoted(noted, readings)).toBe(true);
    // What the real marks gave stays what it was, to the last bit.
    expect(solveExperiment(noted).places).toEqual(solveExperiment(real).places);
  });

  it('go to the practice place that is there already', () => {
    const once = note(real);
    const back = { ...once, present: { ...once.present, placeId: 'place-1' } };
    const twice = note(back);
    expect(twice.places).toEqual(once.places);
    expect(twice.present.placeId).toBe('practice-place');
  });

  it('never fill in what a real column’s marks left open: the width of its tube, the air of its place', () => {
    const open: Experiment = {
      ...real,
      tube: { diameterM: null, otherDiameterM: null, mouth: null, stopper: 'piston', travelM: 1 },
      places: fresh.places,
    };
    expect(isOfRealColumn(open)).toBe(true);
    const noted = note(open);
    expect(noted.tube.diameterM).toBeNull();
    expect(noted.places[0]).toEqual(fresh.places[0]);
    expect(noted.places[1]?.name).toBe(PRACTICE_PLACE);
    expect(areReadingsNoted(noted, readings)).toBe(true);
  });

  it('count recordings as real, and marks of practice or by hand not', () => {
    const of = (evidence: MarkEvidence | null): boolean =>
      isOfRealColumn(exampleExperiment([exampleMark('a', { evidence })]));
    expect([of(heard('recording')), of(heard('practice')), of(null)]).toEqual([true, false, false]);
  });
});

describe('the practice column', () => {
  it('has the experiment’s tube, and its own where the experiment’s can’t be simulated', () => {
    const practice = new PracticeRun(fresh, 1);
    const widthOf = (diameterM: number | null): number => {
      practice.follow({ ...fresh, tube: { ...fresh.tube, diameterM } });
      return practice.readings.diameterM;
    };
    expect([widthOf(0.032), widthOf(null), widthOf(0.3), widthOf(0.05)]).toEqual([0.032, 0.035, 0.035, 0.05]);
    // 2π·4096 Hz·a over the speed of sound stays below 1.5, where the mouth's formulas end, up to 37 mm.
    const high = { ...fresh, forks: fresh.forks.map((fork) => ({ ...fork, nominalHz: 4096 })) };
    const highWidthOf = (diameterM: number | null): number =>
      new PracticeRun({ ...high, tube: { ...high.tube, diameterM } }, 1).readings.diameterM;
    expect([highWidthOf(0.036), highWidthOf(0.05), highWidthOf(null)]).toEqual([0.036, 0.016, 0.016]);
    // A narrower tube resonates at a longer length: e is about 0.6 a (Levine & Schwinger 1948, 0.6133 a).
    practice.follow({ ...fresh, tube: { ...fresh.tube, diameterM: 0.02 } });
    const narrowM = practice.column.resonantLengthsM[0] ?? 0;
    practice.follow({ ...fresh, tube: { ...fresh.tube, diameterM: 0.05 } });
    expect(narrowM - (practice.column.resonantLengthsM[0] ?? 0)).toBeGreaterThan(0.005);
  });
});

describe('the guide’s step of the instruments', () => {
  const isRead = (experiment: Experiment): boolean | undefined =>
    guideSteps(experiment, deeds, false, readings).find(({ id }) => id === 'read')?.isDone;

  it('is done when the place has practice’s air, not when it has any other', () => {
    expect([isRead(fresh), isRead(note(fresh)), isRead(real), isRead(note(real))]).toEqual([
      false,
      true,
      false,
      true,
    ]);
  });
});
