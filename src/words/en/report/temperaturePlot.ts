export const temperaturePlot = {
  title: 'Speed of sound against temperature',
  x: 'air temperature, °C',
  y: 'speed of sound, m/s',
  place: (name: string, mps: string, celsius: string) => `${name}: ${mps} m/s at ${celsius} °C`,
  places: (list: string) => `${list}.`,
  none: 'No place has both a speed and a temperature yet.',
  nameless: 'There are too many points to name them in the picture.',
  band: 'The band is the predicted speed, from dry to saturated air.',
};
