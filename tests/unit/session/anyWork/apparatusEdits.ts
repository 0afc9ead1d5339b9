import fc from 'fast-check';
import { FILLINGS } from '../../../../src/air/gases.ts';
import { MOUTH_SHAPES } from '../../../../src/air/mouth.ts';
import { STOPPERS } from '../../../../src/notebook/experiment.ts';
import type { Experiment, Fork, Place } from '../../../../src/notebook/experiment.ts';
import type { Step } from '../../../../src/notebook/step.ts';
import type { QuantityKind } from '../../../../src/ui/readQuantity.ts';
import { QUANTITIES } from '../../../../src/ui/readQuantity.ts';
import { changed, picked } from './edit.ts';
import type { Edit } from './edit.ts';
import { anyText } from './readings.ts';

type Change = (before: Experiment) => Experiment | null;

/** A change as a view of the page makes it, through the session's one door. @param make  null: its control is off */
function change(words: string, step: Step, make: Change): Edit {
  return {
    words,
    make: (tab, before) => {
      const state = make(before);
      if (state === null) return null;
      tab.bench.change(step, (experiment) => make(experiment) ?? experiment);
      return { step, state };
    },
  };
}

/** Something that is added gets its id from the session. */
function addition(words: string, step: Step, make: (before: Experiment, id: string) => Experiment): Edit {
  return {
    words,
    make: (tab, before) => {
      const id = tab.bench.newId();
      tab.bench.change(step, (experiment) => make(experiment, id));
      return { step, state: make(before, id) };
    },
  };
}

/** A number as typed into its field; the value is in the field's unit. @returns null where the field refuses it */
function typed(kind: QuantityKind, text: string): number | null {
  const reading = kind.read(text);
  return reading.ok ? reading.value : null;
}

/** Numbers as people type them: usual, at a limit, beyond it. */
const number = (...texts: string[]): fc.Arbitrary<string> => fc.constantFrom(...texts);
const pitch = number('512', '341,3', '256 Hz', '1.024 kHz', '100', '2100', '99', '2101', '64', '4096', 'x');
const hertz = number('0.5', '0,001', '50', '0.0001', '60', '1e-3');
const temperature = number('', '20', '68 °F', '293 K', '-30', '60', '-31', '61', '21,5');
const pick = fc.nat({ max: 9 });

function forkOf(before: Experiment, at: number, fields: (fork: Fork) => Partial<Fork> | null) {
  const fork = picked(before.forks, at);
  const wanted = fork === undefined ? null : fields(fork);
  return fork === undefined || wanted === null
    ? null
    : { ...before, forks: changed(before.forks, fork.id, wanted) };
}

function placeOf(before: Experiment, at: number, fields: Partial<Place>) {
  const place = picked(before.places, at);
  return place === undefined ? null : { ...before, places: changed(before.places, place.id, fields) };
}

function withoutFork(before: Experiment, at: number): Experiment | null {
  const fork = picked(before.forks, at);
  const users = [...before.marks, ...before.deletedMarks];
  if (fork === undefined || before.forks.length === 1 || users.some(({ forkId }) => forkId === fork.id))
    return null;
  const forks = before.forks.filter(({ id }) => id !== fork.id);
  const forkId = before.present.forkId === fork.id ? (forks[0]?.id ?? '') : before.present.forkId;
  return { ...before, forks, present: { ...before.present, forkId } };
}

function withoutPlace(before: Experiment, at: number): Experiment | null {
  const place = picked(before.places, at);
  const users = [...before.marks, ...before.deletedMarks];
  if (place === undefined || before.places.length === 1 || users.some(({ placeId }) => placeId === place.id))
    return null;
  const places = before.places.filter(({ id }) => id !== place.id);
  const placeId = before.present.placeId === place.id ? (places[0]?.id ?? '') : before.present.placeId;
  return { ...before, places, present: { ...before.present, placeId } };
}

const addFork = (nominalHz: number): Edit =>
  addition(`add fork ${nominalHz} Hz`, 'add fork', (before, id) => ({
    ...before,
    forks: [
      ...before.forks,
      {
        id,
        nominalHz,
        standardUncertaintyHz: 0.001 * nominalHz,
        measuredHz: null,
        measuredStandardUncertaintyHz: null,
      },
    ],
    present: { ...before.present, forkId: id },
  }));

const addPlace: Edit = addition('add place', 'add place', (before, id) => ({
  ...before,
  places: [
    ...before.places,
    {
      id,
      name: `Place ${before.places.length + 1}`,
      temperatureC: null,
      temperatureStandardUncertaintyC: 0.5,
      humidityPct: null,
      pressurePa: null,
      filling: 'air' as const,
      co2MoleFraction: null,
    },
  ],
  present: { ...before.present, placeId: id },
}));

const forkEdit = fc.oneof(
  fc.constantFrom(256, 288, 341.3, 512, 1024).map(addFork),
  fc.tuple(pitch, pick).map(([text, at]) =>
    change(`fork [${at}] is ${text}`, 'change fork', (before) =>
      forkOf(before, at, () => {
        const nominalHz = typed(QUANTITIES.forkHz, text);
        return nominalHz === null
          ? null
          : { nominalHz, measuredHz: null, measuredStandardUncertaintyHz: null };
      }),
    ),
  ),
  fc.tuple(hertz, pick).map(([text, at]) =>
    change(`± of fork [${at}] is ${text}`, 'change fork', (before) =>
      forkOf(before, at, () => {
        const standardUncertaintyHz = typed(QUANTITIES.uncertaintyHz, text);
        return standardUncertaintyHz === null ? null : { standardUncertaintyHz };
      }),
    ),
  ),
  pick.map((at) =>
    change(`use the measured pitch of fork [${at}]`, 'use measured pitch', (before) =>
      forkOf(before, at, ({ nominalHz }) => ({
        measuredHz: nominalHz + 0.7,
        measuredStandardUncertaintyHz: 0.04,
      })),
    ),
  ),
  pick.map((at) =>
    change(`use the stamp of fork [${at}]`, 'change fork', (before) =>
      forkOf(before, at, ({ measuredHz }) =>
        measuredHz === null ? null : { measuredHz: null, measuredStandardUncertaintyHz: null },
      ),
    ),
  ),
  pick.map((at) => change(`remove fork [${at}]`, 'remove fork', (before) => withoutFork(before, at))),
);

const placeEdit = fc.oneof(
  fc.constant(addPlace),
  fc
    .tuple(anyText(60), pick)
    .map(([name, at]) =>
      change(`place [${at}] is called ${JSON.stringify(name)}`, 'change place', (before) =>
        placeOf(before, at, { name }),
      ),
    ),
  fc.tuple(temperature, pick).map(([text, at]) =>
    change(`place [${at}] has ${text === '' ? 'no temperature' : text}`, 'change place', (before) => {
      const temperatureC = text === '' ? null : typed(QUANTITIES.temperatureC, text);
      return temperatureC === null && text !== '' ? null : placeOf(before, at, { temperatureC });
    }),
  ),
  fc.tuple(number('0', '45', '100', '101', '0.5 %'), pick).map(([text, at]) =>
    change(`place [${at}] has ${text} humidity`, 'change place', (before) => {
      const humidityPct = typed(QUANTITIES.humidityPct, text);
      return humidityPct === null ? null : placeOf(before, at, { humidityPct });
    }),
  ),
  fc.tuple(number('1013', '500', '1100', '499', '101.3 kPa'), pick).map(([text, at]) =>
    change(`place [${at}] has ${text} pressure`, 'change place', (before) => {
      const hPa = typed(QUANTITIES.pressureHpa, text);
      return hPa === null ? null : placeOf(before, at, { pressurePa: hPa * 100 });
    }),
  ),
  fc.tuple(number('800', '0', '10000', '10001', '0,1 %', ''), pick).map(([text, at]) =>
    change(`place [${at}] has ${text} of carbon dioxide`, 'change place', (before) => {
      const ppm = text === '' ? null : typed(QUANTITIES.co2Ppm, text);
      if (ppm === null && text !== '') return null;
      return placeOf(before, at, { co2MoleFraction: ppm === null ? null : ppm / 1e6 });
    }),
  ),
  pick.map((at) => change(`remove place [${at}]`, 'remove place', (before) => withoutPlace(before, at))),
);

const tubeEdit = fc.oneof(
  fc
    .tuple(
      fc.constantFrom('diameterM', 'otherDiameterM'),
      number('30', '3,2 cm', '2', '500', '1.9', '501', ''),
    )
    .map(([field, text]) =>
      change(`${field} ${text}`, 'change tube', (before) => {
        const mm = text === '' ? null : typed(QUANTITIES.diameterMm, text);
        if (mm === null && text !== '') return null;
        return { ...before, tube: { ...before.tube, [field]: mm === null ? null : mm / 1000 } };
      }),
    ),
  fc.constantFrom(null, ...MOUTH_SHAPES).map((mouth) =>
    change(`mouth ${mouth ?? 'not described'}`, 'change tube', (before) => ({
      ...before,
      tube: { ...before.tube, mouth },
    })),
  ),
  fc.constantFrom(...FILLINGS).map((filling) =>
    change(`filled with ${filling}`, 'change place', (before) => ({
      ...before,
      places: before.places.map((place) =>
        place.id === before.present.placeId ? { ...place, filling } : place,
      ),
    })),
  ),
  fc.constantFrom(...STOPPERS).map((stopper) =>
    change(`closed by ${stopper}`, 'change tube', (before) => ({
      ...before,
      tube: { ...before.tube, stopper },
    })),
  ),
  number('120', '10', '500', '9', '501', '1 m').map((text) =>
    change(`longest column ${text}`, 'change tube', (before) => {
      const cm = typed(QUANTITIES.travelCm, text);
      return cm === null ? null : { ...before, tube: { ...before.tube, travelM: cm / 100 } };
    }),
  ),
  number('1', '0.05', '50', '0.04', '0,7', '').map((text) =>
    change(`reading uncertainty ${text}`, 'change rule', (before) => {
      const mm = text === '' ? null : typed(QUANTITIES.readingMm, text);
      if (mm === null && text !== '') return null;
      const readingStandardUncertaintyM = mm === null ? null : mm / 1000;
      return { ...before, rule: { ...before.rule, readingStandardUncertaintyM } };
    }),
  ),
  number('0', '1.5', '-2', '20', '-50', '50', '51').map((text) =>
    change(`zero offset ${text}`, 'change rule', (before) => {
      const cm = typed(QUANTITIES.zeroOffsetCm, text);
      return cm === null ? null : { ...before, rule: { ...before.rule, zeroOffsetM: cm / 100 } };
    }),
  ),
  fc.constant(
    change('note the practice readings', 'note readings', (before) => ({
      ...before,
      tube: { ...before.tube, diameterM: 0.035 },
      places: changed(before.places, before.present.placeId, {
        temperatureC: 21.4,
        humidityPct: 45,
        pressurePa: null,
      }),
    })),
  ),
);

const present = fc.tuple(fc.constantFrom('fork', 'place', 'ends' as const), pick).map(([what, at]): Edit => {
  const wanted = (before: Experiment): Partial<Experiment['present']> => {
    if (what === 'fork') return { forkId: picked(before.forks, at)?.id ?? '' };
    if (what === 'place') return { placeId: picked(before.places, at)?.id ?? '' };
    return { ends: at % 2 === 0 ? 'closed' : 'open' };
  };
  return {
    words: `measure now with ${what} [${at}]`,
    make: (tab, before) => {
      tab.bench.setPresent(wanted(before));
      const state = { ...before, present: { ...before.present, ...wanted(before) } };
      return { step: 'change present', state };
    },
  };
});

const words = fc.oneof(
  // One line, as its field is.
  anyText(120)
    .map((text) => text.replaceAll('\n', ' '))
    .map((title) => change(`title ${JSON.stringify(title)}`, 'rename', (before) => ({ ...before, title }))),
  anyText(200).map((note) =>
    change(`note ${JSON.stringify(note)}`, 'write note', (before) => ({ ...before, note })),
  ),
);

export const anyApparatusEdit: fc.Arbitrary<Edit> = fc.oneof(
  { weight: 3, arbitrary: forkEdit },
  { weight: 3, arbitrary: placeEdit },
  { weight: 2, arbitrary: tubeEdit },
  { weight: 2, arbitrary: present },
  { weight: 1, arbitrary: words },
);
