import type { Experiment } from '../../notebook/experiment.ts';
import { laterWords } from '../../words/inUse.ts';
import { methodWords } from '../../words/report/labReport.ts';
import { markup } from '../markup.ts';
import type { Markup } from '../markup.ts';

/** What was done, as far as the marks show it. */
export function methodPart({ marks }: Experiment): Markup {
  const evidence = marks.flatMap((mark) => (mark.evidence === null ? [] : [mark.evidence]));
  const words = methodWords({
    marks: marks.length,
    heard: evidence.length,
    sources: [...new Set(evidence.map(({ source }) => source))],
    bracketed: marks.filter((mark) => mark.otherLengthM !== null).length,
  });
  return markup`<section><h2>${laterWords.methodPart.heading}</h2><p>${words}</p></section>`;
}
