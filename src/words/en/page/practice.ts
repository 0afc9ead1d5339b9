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
  rule: 'Magnifier: the rule at the piston',
  room: 'Room',
  rooms: { quiet: 'quiet', talk: 'some talk', 'full class': 'full class' },
  instruments: (celsius: string, humidityPercent: string, diameterMm: string) =>
    `Instruments: ${celsius} °C, ${humidityPercent} % humidity, tube ${diameterMm} mm wide inside`,
  /** Beside the instruments, where the present place is another room. */
  instrumentsApart: (celsius: string, humidityPercent: string, diameterMm: string, place: string) =>
    `Instruments: ${celsius} °C, ${humidityPercent} % humidity, tube ${diameterMm} mm wide inside. The present place is another room, so they are noted at a place of their own: “${place}”`,
  note: 'Note these readings',
  noted: 'The readings are noted under Apparatus.',
  notedApart: (place: string) =>
    `The readings are noted under Apparatus, at a place of their own: “${place}”. What you measure now belongs to that place.`,
  otherTube: (diameterMm: string, practiceDiameterMm: string) =>
    `The practice tube is ${practiceDiameterMm} mm wide, but this experiment’s tube is ${diameterMm} mm. To practise, start a new experiment under Records.`,
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
    slideAgain: 'Too few found: strike again and slide past them more slowly.',
    back: 'Go back as the picture shows, until it says “Here”.',
    type: 'Read the length in the magnifier and type it above the tube.',
    rest: 'Go back to the next mark the same way; read and type its length.',
    read: 'Press “Note these readings” beside the fork’s buttons.',
    faintSliding: 'The fork is faint: strike it again and slide on.',
    faint: 'The fork is faint: strike it again. The way back stays.',
  },
  done: 'Done: the speed is at the top. More marks make it more certain.',
  showTruth: 'Show the true values',
  hideTruth: 'Hide the true values',
};
