import type { Experiment } from '../../notebook/experiment.ts';
import { laterWords } from '../../words/inUse.ts';
import { language } from '../../words/language.ts';
import { titleWords } from '../../words/titles.ts';
import { markup, trusted } from '../markup.ts';
import { labReport } from './labReport.ts';
import type { LabReportInput } from './labReportInput.ts';
import { LAB_REPORT_STYLE } from './labReportStyle.ts';

/** Nothing may run and nothing may be fetched, should the file be tampered with. */
const POLICY = ["default-src 'none'", "style-src 'unsafe-inline'"].join('; ');

/** What the report, and a PDF that is printed of it, is called. */
export function reportTitle({ title, group, className, ...rest }: Experiment): string {
  const called = title.trim() === '' ? laterWords.report.fileTitle : titleWords({ ...rest, title });
  return [called, group.trim(), className.trim()].filter((part) => part !== '').join(', ');
}

/** The report as one HTML file: no script, nothing from outside. */
export function labReportFile(input: LabReportInput): string {
  const { experiment } = input;
  const title = reportTitle(experiment);
  return markup`<!doctype html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<style>
@page { margin: 18mm 16mm; @bottom-center { content: counter(page) " / " counter(pages); font: 9pt sans-serif; } }
html, body { margin: 0; background: #ffffff; }
${trusted(LAB_REPORT_STYLE)}</style>
</head>
<body>
${labReport(input)}
</body>
</html>
`.text;
}
