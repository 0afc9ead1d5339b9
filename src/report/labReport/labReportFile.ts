import { titleWords } from '../../words/titles.ts';
import { reportWords } from '../../words/report/labReport.ts';
import { markup, trusted } from '../markup.ts';
import { labReport } from './labReport.ts';
import type { LabReportInput } from './labReportInput.ts';
import { LAB_REPORT_STYLE } from './labReportStyle.ts';

/** Nothing may run and nothing may be fetched, should the file be tampered with. */
const POLICY = ["default-src 'none'", "style-src 'unsafe-inline'"].join('; ');

/** The report as one HTML file: no script, nothing from outside. */
export function labReportFile(input: LabReportInput): string {
  const { experiment } = input;
  const title = experiment.title.trim() === '' ? reportWords.fileTitle : titleWords(experiment);
  return markup`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<style>
@page { margin: 18mm 16mm; }
html, body { margin: 0; background: #ffffff; }
${trusted(LAB_REPORT_STYLE)}</style>
</head>
<body>
${labReport(input)}
</body>
</html>
`.text;
}
