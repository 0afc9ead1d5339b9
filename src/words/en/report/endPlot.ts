export const endPlot = {
  title: 'End correction against diameter',
  x: 'inside diameter of the tube, mm',
  y: 'end correction, mm',
  line: (slope: string, uncertainty: string) =>
    `The line through the tubes rises by (${slope} ± ${uncertainty}) times the diameter (95 %).`,
  tube: (diameterMm: string, endMm: string) => `${diameterMm} mm: ${endMm} mm`,
  tubes: (list: string) => `${list}.`,
  noTube: 'No tube with a measured end correction yet.',
  anotherTube: 'A tube of another diameter gives the line. Begin a new experiment for it, under Records.',
  theory: (slope: string) => `The dashed line is theory for a thin rim, ${slope} times the diameter.`,
};
