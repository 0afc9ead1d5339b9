import { words } from './inUse.ts';
import { titleWords } from './titles.ts';
import type { News } from '../session/notice.ts';
import { captureFailureWords } from './capture.ts';
import { reportWarnings } from './listening.ts';
import { LIMITS } from '../limits/limits.ts';
import { counted, plural } from './en/grammar.ts';
import { fixed, stampedHertz } from './numbers.ts';
import { firstFaultWords } from './recordFaults.ts';
import { keepingFaultWords, notLoadedWords } from './records.ts';
import { stepWords } from './steps.ts';
import { storageFaultWords } from './storageFaults.ts';

/** What is shown and announced of news. */
export function newsWords(news: News | string): string {
  if (typeof news === 'string') return news;
  switch (news.code) {
    case 'undone':
      return `Undone: ${stepWords(news.step)}.`;
    case 'done-again':
      return `Done again: ${stepWords(news.step)}.`;
    case 'mark-deleted':
      return 'Mark deleted. It can be brought back below the list.';
    case 'resonance-flagged':
      return `Resonance found: ${plural(news.waiting, 'type its length', `${news.waiting} lengths to type`)}.`;
    case 'resonance-maybe':
      return `Perhaps a resonance, ${fixed(100 * news.confidence, 0)} % sure. Pass the place again, or keep it (K) if you heard it too.`;
    case 'resonance-again':
      return `The same resonance again: counted with mark ${news.markNumber}.`;
    case 'resonance-joined':
      return `A resonance: joined with mark ${news.markNumber}. If it is another resonance, part them in the list of marks (“Separate”).`;
    case 'flag-withheld':
      return 'A resonance was heard but not marked: the sound broke off in it. It can be let in below “Can the level be trusted?”.';
    case 'gain-check-passed':
      return 'Gain check passed: the fork died smoothly while there was talk. It is kept with the experiment.';
    case 'gain-check-failed':
      return 'Gain check failed: something changes the level. Marks made until that is put right say so.';
    case 'none-in-recording':
      return reportWarnings(news.report)[0]?.message ?? 'No resonance was found in this recording.';
    case 'found-in-recording':
      return foundWords(news);
    case 'recording-heard-again':
      return 'The recording is heard again from its beginning, for this fork.';
    case 'listening-failed':
      return withVoid(captureFailureWords(news.failure).what, news.isVoid);
    case 'listening-held':
      return withVoid(words.hold[news.hold], news.isVoid);
    case 'change-refused':
      return keepingFaultWords(news.fault);
    case 'page-fault':
      return words.pageFault[news.what];
    case 'open-elsewhere':
      return 'This experiment is open in another tab: take it over, or open a copy (top of the page).';
    case 'busy-elsewhere':
      return 'This experiment is open in another tab: close it there first.';
    case 'taken-elsewhere':
      return 'This experiment is now worked on in another tab; this one only shows it.';
    case 'store-erased':
      return 'What this browser had stored for the page was erased. The open experiment is saved again; others and kept sound are gone from this device.';
    case 'last-unreadable':
      return `The last experiment couldn’t be read: ${firstFaultWords(news.faults)} It is kept as it is, under Records.`;
    case 'changes-not-saved':
      return `The last changes of “${titleWords(news.of)}” weren’t saved: ${storageFaultWords(news.fault)}`;
    case 'not-opened':
      return `This experiment can’t be opened: ${notLoadedWords(news.why)}`;
    case 'not-duplicated':
      return `This experiment can’t be duplicated: ${notLoadedWords(news.why)}`;
    case 'copy-open':
      return `You are working on “${titleWords(news.of)}” now. The original stays in the list.`;
    case 'lesson-open':
      return 'The lesson is set up. What was here before is kept in the list under Records.';
    case 'lesson-again':
      return 'This lesson was begun here before: it is open as it was left. For another group choose “New, same apparatus” under Records.';
    case 'lesson-without':
      return `The lesson is set up without ${news.unheardHz.map((hz) => `${stampedHertz(hz)} Hz`).join(', ')}: the bench hears forks from ${LIMITS.stampedHz.lowest} to ${LIMITS.stampedHz.highest} Hz.`;
    case 'lesson-revealed':
      return `Nothing is kept back any more in ${counted(news.experiments, 'experiment')} of this lesson.`;
    case 'no-such-code':
      return 'No lesson on this device is opened by this code: type it as your teacher gave it.';
    case 'experiment-deleted':
      return 'Experiment deleted. It can be brought back below the list.';
    case 'title-too-long':
      return words.tooLong.title(news.length, news.longest);
    case 'sound-not-kept':
      return soundWords(news.why);
  }
}

/**
 * What must be heard with the news and is there for the eye already, where the listening was: what to do about a
 * failure. Null where there is nothing.
 */
export function unshownWords(news: News | string): string | null {
  if (typeof news === 'string' || news.code !== 'listening-failed') return null;
  const { advice } = captureFailureWords(news.failure);
  return advice === '' ? null : advice;
}

function foundWords({
  resonances,
  maybes,
  isWaiting,
}: Extract<News, { readonly code: 'found-in-recording' }>): string {
  const sure = counted(resonances - maybes, 'resonance');
  const found = maybes === 0 ? sure : `${sure}, and ${maybes} that may be one,`;
  return isWaiting
    ? `${found} found in the recording: type the lengths.`
    : `${found} found in the recording.`;
}

function withVoid(said: string, isVoid: boolean): string {
  return isVoid ? `${said} The sounding that was going on is void: strike the fork again.` : said;
}

function soundWords(why: Extract<News, { code: 'sound-not-kept' }>['why']): string {
  switch (why) {
    case 'nothing-stored':
      return 'Sound can’t be kept: this browser stores nothing for the page now.';
    case 'limit':
      return 'Kept sound has reached its limit: no more is kept. Save and erase some under Records.';
    default:
      return `Sound is no longer kept. ${storageFaultWords(why)}`;
  }
}
