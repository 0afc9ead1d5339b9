export const classPage = {
  heading: 'Class',
  lead: 'Drop the groups’ files here (JSON or CSV, any number), or paste a table: marks with a column group, or results with group, speed_mps and standard_uncertainty_mps. Or read the codes on the groups’ screens. All of it stays on this device until you empty it, and goes nowhere else.',
  back: 'Back to records',
  print: 'Print the overview',
  saveCsv: 'Save class as CSV',
  saveJson: 'Save class as JSON',
  copy: 'Copy table',
  copied: 'The class’s table was copied.',
  empty: 'Empty the class view',
  discuss: 'To discuss',
  groups: 'Groups',
  table: 'Table of groups',
  use: 'Use',
  group: 'Group',
  speed: 'm/s (95 %)',
  marks: 'Marks',
  remarks: 'Remarks',
  /** A group whose name others have, too. */
  groupInFile: (name: string, fileName: string) => `${name}, ${fileName}`,
  count: (group: string) => `Count ${group}`,
};

export const camera = {
  start: 'Read codes with the camera',
  stop: 'Stop the camera',
  lead: 'Hold a group’s code before the camera. Pictures are looked at here and thrown away.',
  none: 'This browser gives the page no camera. Read the code with a phone or tablet, or open the group’s link here.',
  refused: 'The camera was refused: allow it beside the address, or open the group’s link here.',
  busy: 'The camera can’t be opened: another program may have it.',
  picture: 'What the camera sees',
};
