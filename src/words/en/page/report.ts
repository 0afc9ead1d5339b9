export const reportPage = {
  name: 'Lab report',
  print: 'Print or save as PDF',
  save: 'Save as an HTML file',
  leaveWorking: 'Leave the working out, with room to calculate',
  back: 'Back to records',
  lines: 'There are empty lines for names and discussion.',
  /** What goes on stands after it. */
  pending: 'The report:',
};
