import type { MarkEvidence } from '../../marks/mark.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import { counted } from '../../words/numbers.ts';
import { markup } from '../markup.ts';
import type { Markup } from '../markup.ts';

const SOURCES: Readonly<Record<MarkEvidence['source'], string>> = {
  microphone: 'through the microphone',
  recording: 'in a recording',
  practice: 'on the simulated practice column',
};

/** What was done, in the words of the trade, as far as the marks show it. */
export function methodPart({ marks }: Experiment): Markup {
  const heard = marks.filter((mark) => mark.evidence !== null);
  const sources = [...new Set(heard.map((mark) => mark.evidence?.source))].flatMap((source) =>
    source === undefined ? [] : [SOURCES[source]],
  );
  const byHand = marks.length - heard.length;
  const bracketed = marks.filter((mark) => mark.otherLengthM !== null).length;
  const sentences = [
    'A sounding tuning fork is held at the mouth of an air column, and the column’s length is changed until the column resonates: its sound swells at the fork’s pitch.',
    heard.length === 0
      ? ''
      : `${heard.length} of ${counted(marks.length, 'mark was', 'marks were')} found by listening at the fork’s pitch alone, ${sources.join(' and ')}, against the room’s noise in the same narrow band; the length was then read off the rule.`,
    byHand === 0 ? '' : `${byHand} of ${counted(marks.length, 'was', 'were')} marked by hand.`,
    bracketed === 0
      ? ''
      : `Where two lengths stand (${bracketed}), the resonance lies between them: the middle counts.`,
    'A closed column resonates where its length is an odd number of quarter wavelengths, an open one where it is a whole number of half wavelengths, less an end correction at each open end. The speed is the wavelength times the pitch; one weighted fit takes all marks together, each with its uncertainty, and the walls’ slowing of the wave is taken out where the tube’s diameter is known.',
  ];
  return markup`<section><h2>Method</h2><p>${sentences.filter((sentence) => sentence !== '').join(' ')}</p></section>`;
}
