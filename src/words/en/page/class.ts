import { counted } from '../grammar.ts';

export const classPage = {
  heading: 'Class',
  lead: 'Drop the groups’ files here (JSON or CSV, any number) or paste a table: of marks with a column group, or of results with the columns group, speed_mps and standard_uncertainty_mps. Or read the codes from the groups’ screens. All of it stays on this device until you empty the class view. Nothing is sent.',
  back: 'Back to Records',
  print: 'Print the overview',
  saveCsv: 'Save class as CSV',
  saveJson: 'Save class as JSON',
  copy: 'Copy table',
  copied: 'The class’s table is copied, ready to paste.',
  empty: 'Empty the class view',
  discuss: 'To discuss',
  groups: 'Groups',
  table: 'Table of groups',
  use: 'Count',
  group: 'Group',
  speed: 'm/s (95 %)',
  marks: 'Marks',
  remarks: 'Remarks',
  /** A group whose name others have, too. */
  groupInFile: (name: string, fileName: string) => `${name}, ${fileName}`,
  count: (group: string) => `Count ${group}`,
};

/** What became of a code that was read. */
export const codeTaken = {
  notACode: 'This code holds no group’s result.',
  /** One of the several codes of a group is in. */
  part: (have: number, of: number) => `${have} of ${of} codes of this group are read. Show the next one.`,
  new: (group: string) => `Added: “${group}”.`,
  there: (group: string) => `Here already, unchanged: “${group}”.`,
  newer: (group: string) => `Here already: “${group}”. This version is newer and counts instead.`,
  older: (group: string) => `Here already: “${group}”. This version isn’t newer and doesn’t count.`,
  inTable: (rows: number) => `The table of groups has ${counted(rows, 'row')}.`,
};

export const camera = {
  start: 'Read codes with the camera',
  stop: 'Stop the camera',
  lead: 'Hold a group’s code in front of the camera. The pictures are not saved.',
  none: 'This browser gives the page no camera. Read the code with a phone or tablet, or open the group’s link here.',
  refused:
    'This page isn’t allowed to use the camera. Allow it beside the address, or open the group’s link here.',
  busy: 'The camera doesn’t start. Another program may be using it.',
  picture: 'What the camera sees',
};
