/** What is typed on the page beside the lengths of marks: names within sentences, and the units that are understood. */
export const quantityWords = {
  pitch: 'pitch',
  uncertainty: 'uncertainty',
  diameter: 'diameter',
  travel: 'longest column',
  zeroOffset: 'zero offset',
  reading: 'reading uncertainty',
  temperature: 'temperature',
  humidity: 'humidity',
  pressure: 'pressure',
  speed: 'speed',
  lengthUnits: 'cm, mm or m',
  kelvinUnits: '°C or K',
  speedUnits: 'm/s',
} as const;
