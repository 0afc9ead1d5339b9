export const endPlot = {
  title: 'End correction against diameter',
  x: 'inside diameter of the tube, mm',
  y: 'end correction, mm',
  line: (slope: string, uncertainty: string) =>
    `The tubes’ line rises by (${slope} ± ${uncertainty}) · d (95 %).`,
  tube: (diameterMm: string, endMm: string) => `${diameterMm} mm: ${endMm} mm`,
  noTube: 'No tube with a measured end correction yet.',
  anotherTube: 'A tube of another diameter gives the line: begin a new experiment under Records.',
  theory: (slope: string) => `The dashed line is theory for a thin rim, ${slope} · d.`,
};
