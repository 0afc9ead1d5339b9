import type { MouthShape } from '../../../air/mouth.ts';
import { fixed, hertz } from '../../numbers.ts';

export const tube = {
  heading: 'Tube and rule',
  diameter: 'Inside diameter',
  diameterHint: 'for the end correction and the slowing by the wall',
  otherDiameter: 'Diameter at the other end',
  otherDiameterHint: 'of a tube that slides in another, open at both ends; empty: the same',
  travel: 'Longest column',
  travelHint: 'longest length you can set',
  stopper: 'What closes it',
  stoppers: {
    piston: 'a piston',
    dipped: 'water, the tube moves',
    filled: 'water, its level moves',
  },
  reading: 'Reading uncertainty',
  readingHint: (taken: string) =>
    `standard uncertainty of one length, including how well you find the resonance. If empty: ${taken}.`,
  zero: 'Zero offset',
  zeroHint: 'what the rule reads when the column’s length is zero; subtracted from every reading',
  caution:
    'A glass tube breaks: clamp it softly, and keep water and laptop apart. Your school’s lab rules come first.',
};

/** What the open end looks like. */
export const mouthChoice = {
  legend: 'Mouth of the tube',
  lead: 'The column acts longer than its tube; how much depends on the mouth (dashed in the pictures). This value is used together with your lengths, which correct it if they are better.',
  notDescribed: 'Not described',
  anyOf: 'It may be any of these.',
  /** How long the end correction is, before anything was measured. */
  ratio: (ratio: string, uncertainty: string) => `End correction: ${ratio} ± ${uncertainty} radii.`,
  names: {
    'thin-rim': 'Thin rim',
    'thick-rim': 'Thick rim',
    flange: 'Flange',
    obstructed: 'Something close',
    ideal: 'Ideal',
  } satisfies Readonly<Record<MouthShape, string>>,
  shapes: {
    'thin-rim': 'A bare tube; its wall is thinner than a tenth of its radius.',
    'thick-rim': 'A wall of a tenth to a half of the radius.',
    flange: 'A plate around the mouth, or the tube ends in a wall.',
    obstructed: 'A hand, a stand or a thick fork less than a diameter away.',
    ideal: 'As in exercises: no end correction.',
  } satisfies Readonly<Record<MouthShape, string>>,
};

export const forks = {
  heading: 'Forks',
  lead: 'Stamped frequency, and its standard uncertainty until the fork is measured.',
  pitch: (number: number) => `Fork ${number}`,
  uncertainty: (number: number) => `± fork ${number}`,
  remove: 'Remove',
  removeNamed: (number: number) => `Remove fork ${number}`,
  notMeasured: 'Not measured yet (see Check).',
  measured: (frequencyHz: number, standardUncertaintyHz: number) =>
    `Measured ${fixed(frequencyHz, 2)} ± ${fixed(standardUncertaintyHz, 2)} Hz; the fit uses this.`,
  useStamp: 'Use the stamp',
  add: 'Add a fork',
  choose: 'choose its frequency…',
  offered: (frequencyHz: number) => `${hertz(frequencyHz)} Hz`,
  others: 'Any other frequency: add the nearest and change the number.',
  caution:
    'Strike a fork on rubber or the sole of a shoe, never on glass or a hard edge. Keep a ringing fork away from teeth and glass.',
};

export const places = {
  heading: 'Places and air',
  lead: 'What thermometer, hygrometer and barometer read there. Leave empty what you didn’t read.',
  /** Also the name that a new place begins with. */
  place: (number: number) => `Place ${number}`,
  name: 'Name',
  remove: 'Remove',
  removeNamed: (number: number) => `Remove place ${number}`,
  temperature: 'Air temperature',
  temperatureUncertainty: 'Its uncertainty',
  temperatureUncertaintyHint: 'of the air in the tube: hands and breath warm it',
  filling: 'In the tube',
  humidity: 'Humidity',
  pressure: 'Pressure',
  co2: 'Carbon dioxide',
  add: 'Add a place',
};
