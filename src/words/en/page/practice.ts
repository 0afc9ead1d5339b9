import { fixed } from '../../numbers.ts';

/** The hands of the practice column. */
export const practice = {
  heading: 'Practice column',
  strike: 'Strike the fork',
  forkAtMouth: 'Fork at the mouth',
  damp: 'Damp it',
  shorter: 'One millimetre shorter',
  longer: 'One millimetre longer',
  shorterFine: 'A fifth of a millimetre shorter',
  longerFine: 'A fifth of a millimetre longer',
  rule: 'The rule close up at the piston',
  room: 'Room',
  rooms: { quiet: 'quiet', talk: 'some talk', 'full class': 'full class' },
  /** @param ownPlace  where they would be noted, if not at the present place */
  instruments: (
    temperatureC: number,
    humidityPct: number,
    diameterM: number,
    ownPlace: string | null,
  ): string => {
    const read = `Instruments: ${fixed(temperatureC, 1)} °C, ${fixed(humidityPct, 0)} % humidity, tube ${fixed(diameterM * 1000, 1)} mm wide inside`;
    return ownPlace === null
      ? read
      : `${read}. This place is another room: they get a place of their own, “${ownPlace}”`;
  },
  note: 'Note these readings',
  noted: 'The readings are noted under Apparatus.',
  notedApart: (place: string) =>
    `The readings are noted under Apparatus, at a place of their own, “${place}”, which is now measured at.`,
  otherTube: (diameterM: number, practiceDiameterM: number) =>
    `The practice tube can’t be ${fixed(diameterM * 1000, 1)} mm wide as this experiment’s: it is ${fixed(practiceDiameterM * 1000, 1)} mm. Practise in a new experiment (Records).`,
};

/** From the door to a speed of sound, step by step. */
export const guide = {
  heading: 'Guide',
  count: (done: number, all: number) => `Guide, ${done} of ${all}:`,
  /** Short enough for two lines on a telephone. */
  says: {
    listen: 'Press Listen and wait a moment.',
    strike: 'Strike the fork and hold it at the mouth.',
    slide: 'Drag the handle slowly to the far end: each flash is a mark.',
    slideAgain: 'Too few were found: strike again and slide past them, slower.',
    back: 'Go back as the picture says, until it says “Here”.',
    type: 'Read the magnifier and type that length over the tube.',
    rest: 'Go back to the next mark the same way; read and type it.',
    read: 'Press “Note these readings” beside the fork’s buttons.',
    faintSliding: 'The fork is faint: strike it again and slide on.',
    faint: 'The fork is faint: strike it again. The way back stays.',
  },
  done: 'Done: the speed stands at the top. More marks make it more certain.',
  showTruth: 'Show the truth',
  hideTruth: 'Hide the truth',
};
