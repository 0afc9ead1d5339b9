export const reportPage = {
  name: 'Lab report',
  print: 'Print or save as PDF',
  save: 'Save as an HTML file',
  leaveWorking: 'Leave the working to the student, with room to calculate',
  back: 'Back to records',
  lines: 'Names and discussion have empty lines to write on.',
  /** What goes on stands after it. */
  pending: 'The report is',
};
