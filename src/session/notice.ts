import type { Titled } from '../notebook/experiment.ts';
import type { CaptureFailure, CaptureHold } from '../capture/soundSource.ts';
import type { Experiment } from '../notebook/experiment.ts';
import type { KeepingFault } from '../notebook/keepingRule.ts';
import type { RecordFault } from '../notebook/recordFault.ts';
import type { StorageFault } from '../notebook/storageFault.ts';
import type { ListeningReport } from './hearing/listeningTypes.ts';
import type { NotLoaded } from './experiment/loaded.ts';

/** What the session has to say. */
export type News =
  | {
      readonly code:
        | 'gain-check-passed'
        | 'gain-check-failed'
        | 'flag-withheld'
        | 'recording-heard-again'
        | 'mark-deleted'
        | 'open-elsewhere'
        | 'busy-elsewhere'
        | 'taken-elsewhere'
        | 'store-erased'
        | 'lesson-open'
        | 'lesson-again'
        | 'no-such-code'
        | 'experiment-deleted';
    }
  /** A step that was undone or done again, by its name. */
  | { readonly code: 'undone' | 'done-again'; readonly step: string }
  /** Marks that wait for a length, this one included. */
  | { readonly code: 'resonance-flagged'; readonly riseDb: number; readonly waiting: number }
  /** It only may be one, and is no mark so far. @property timeS  which, on the source's axis @property confidence  that it is one, 0..1 */
  | { readonly code: 'resonance-maybe'; readonly timeS: number; readonly confidence: number }
  /** Counted with a mark: surely, or as a judgement that can be parted again. */
  | {
      readonly code: 'resonance-again' | 'resonance-joined';
      readonly riseDb: number;
      readonly markNumber: number;
    }
  | { readonly code: 'none-in-recording'; readonly report: ListeningReport }
  | {
      readonly code: 'found-in-recording';
      readonly resonances: number;
      /** Of these, how many only may be one. */
      readonly maybes: number;
      /** Whether marks wait for their lengths. */
      readonly isWaiting: boolean;
    }
  /** `isVoid`: it cut through a sounding. */
  | { readonly code: 'listening-failed'; readonly failure: CaptureFailure; readonly isVoid: boolean }
  | { readonly code: 'listening-held'; readonly hold: CaptureHold; readonly isVoid: boolean }
  | { readonly code: 'change-refused'; readonly fault: KeepingFault }
  /** Of the page itself: something didn't follow a change, or listening couldn't. */
  | { readonly code: 'page-fault'; readonly what: 'follow' | 'hearing' }
  | { readonly code: 'last-unreadable'; readonly faults: readonly RecordFault[] }
  | { readonly code: 'changes-not-saved'; readonly of: Titled; readonly fault: StorageFault }
  | { readonly code: 'not-opened' | 'not-duplicated'; readonly why: NotLoaded }
  | { readonly code: 'copy-open'; readonly of: Titled }
  /** Forks of a lesson that can't be heard: left out. */
  | { readonly code: 'lesson-without'; readonly unheardHz: readonly number[] }
  | { readonly code: 'lesson-revealed'; readonly experiments: number }
  | { readonly code: 'title-too-long'; readonly length: number; readonly longest: number }
  | {
      readonly code: 'sound-not-kept';
      readonly why: 'nothing-stored' | 'limit' | StorageFault;
    };

/** Something to be shown and announced: `serial` grows so that the same news is announced again. */
export interface Notice {
  readonly serial: number;
  readonly kind: 'info' | 'problem';
  /** What the page itself has to say comes as a text. */
  readonly news: News | string;
  /** Whether it still is true of the experiment; it goes as soon as it isn't. Without it, it holds. */
  readonly holds?: (experiment: Experiment) => boolean;
}

/** Shows news and has them announced. @param holds  as `Notice.holds` */
export type Tell = (kind: Notice['kind'], news: News, holds?: Notice['holds']) => void;
