export const temperaturePlot = {
  title: 'Speed of sound against temperature',
  x: 'air temperature, °C',
  y: 'speed of sound, m/s',
  place: (name: string, mps: string, celsius: string) => `${name}: ${mps} m/s at ${celsius} °C`,
  none: 'No place with a temperature yet',
  nameless: 'So many points bear no names in the picture.',
  band: 'The band is theory from dry to saturated air.',
};
