import { words } from './inUse.ts';
import { titleWords } from './titles.ts';
import type { News } from '../session/notice.ts';
import { captureFailureWords } from './capture.ts';
import { reportWarnings } from './listening.ts';
import { LIMITS } from '../limits/limits.ts';
import { listed } from './lists.ts';
import { hertz, percent, stampedHertz } from './numbers.ts';
import { firstFaultWords } from './recordFaults.ts';
import { keepingFaultWords, notLoadedWords } from './records.ts';
import { stepWords } from './steps.ts';
import { storageFaultWords } from './storageFaults.ts';

/** What is shown and announced of news. */
export function newsWords(news: News | string): string {
  if (typeof news === 'string') return news;
  const said = words.notice;
  switch (news.code) {
    case 'undone':
      return said.undone(stepWords(news.step));
    case 'done-again':
      return said.redone(stepWords(news.step));
    case 'mark-deleted':
      return said.markDeleted;
    case 'resonance-flagged':
      return said.resonanceFound(news.waiting);
    case 'resonance-maybe':
      return said.resonanceMaybe(percent(news.confidence));
    case 'resonance-again':
      return said.resonanceAgain(news.markNumber);
    case 'resonance-joined':
      return said.resonanceJoined(news.markNumber);
    case 'flag-withheld':
      return said.notMarked;
    case 'gain-check-passed':
      return said.gainCheckPassed;
    case 'gain-check-failed':
      return said.gainCheckFailed;
    case 'none-in-recording':
      return reportWarnings(news.report)[0]?.message ?? said.noneInRecording;
    case 'found-in-recording':
      return foundWords(news);
    case 'recording-heard-again':
      return said.recordingHeardAgain;
    case 'listening-failed':
      return withVoid(captureFailureWords(news.failure).what, news.isVoid);
    case 'listening-held':
      return withVoid(words.hold[news.hold], news.isVoid);
    case 'change-refused':
      return keepingFaultWords(news.fault);
    case 'page-fault':
      return words.pageFault[news.what];
    case 'open-elsewhere':
      return said.openElsewhere;
    case 'busy-elsewhere':
      return said.busyElsewhere;
    case 'taken-elsewhere':
      return said.takenElsewhere;
    case 'store-erased':
      return said.storeErased;
    case 'last-unreadable':
      return said.lastUnreadable(firstFaultWords(news.faults));
    case 'changes-not-saved':
      return said.changesNotSaved(titleWords(news.of), storageFaultWords(news.fault));
    case 'not-opened':
      return said.notOpened(notLoadedWords(news.why));
    case 'not-duplicated':
      return said.notDuplicated(notLoadedWords(news.why));
    case 'copy-open':
      return said.copyOpen(titleWords(news.of));
    case 'lesson-open':
      return said.lessonOpen;
    case 'lesson-again':
      return said.lessonAgain;
    case 'lesson-without':
      return said.lessonWithout(
        listed(news.unheardHz.map((hz) => `${stampedHertz(hz)} Hz`)),
        hertz(LIMITS.stampedHz.lowest),
        hertz(LIMITS.stampedHz.highest),
      );
    case 'lesson-revealed':
      return said.lessonRevealed(news.experiments);
    case 'no-such-code':
      return said.noSuchCode;
    case 'experiment-deleted':
      return said.experimentDeleted;
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
  const said = words.notice;
  const sure = resonances - maybes;
  if (maybes === 0) return isWaiting ? said.foundToType(sure) : said.foundInRecording(sure);
  if (sure === 0) return said.onlyMaybes(maybes);
  return isWaiting ? said.maybesToType(sure, maybes) : said.maybesInRecording(sure, maybes);
}

function withVoid(said: string, isVoid: boolean): string {
  return isVoid ? `${said} ${words.notice.strikeVoid}` : said;
}

function soundWords(why: Extract<News, { code: 'sound-not-kept' }>['why']): string {
  switch (why) {
    case 'nothing-stored':
      return words.notice.soundNowhere;
    case 'limit':
      return words.notice.soundLimit;
    default:
      return words.notice.soundStopped(storageFaultWords(why));
  }
}
