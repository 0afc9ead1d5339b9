export const bringIn = {
  files: 'Open files (JSON, CSV, WAV; many at once)',
  filesName: 'Experiment file to open',
  table: 'Paste or type a table',
  read: 'Read the table',
};
