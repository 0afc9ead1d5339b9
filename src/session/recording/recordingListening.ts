import type { SampleBlock } from '../../capture/soundSource.ts';
import { joinReports } from './joinReports.ts';
import type { PartReport } from './joinReports.ts';
import type { ListeningLike } from '../hearing/listeningLike.ts';
import type { ListeningReport, ListeningUpdate } from '../hearing/listeningTypes.ts';
import { LongListening } from './longListening.ts';

/** Longest stretch that one listening hears where the fork rests now and then, s. */
const PART_S = 600;

/**
 * Listens to a recording of any length, with an offline report on its whole, in memory that grows with what is found alone.
 * Beyond ten minutes it is heard and looked at in parts that are joined where no fork sounds; up to there it is the
 * listening that `create` makes.
 */
export class RecordingListening implements ListeningLike {
  private readonly long: LongListening;
  private readonly parts: PartReport[] = [];

  /**
   * @param create  makes a listening that hears from now on
   * @throws what `create` throws
   */
  constructor(sampleRateHz: number, create: () => ListeningLike) {
    const onReport = (report: ListeningReport, untilS: number): void => {
      this.parts.push({ report, fromS: this.long.presentSinceS, untilS });
    };
    this.long = new LongListening(sampleRateHz, create, { oldS: PART_S, onReport });
  }

  push(block: SampleBlock): ListeningUpdate {
    return this.long.push(block);
  }

  finish(): ListeningUpdate {
    return this.long.finish();
  }

  offlineReport(): ListeningReport {
    const report = this.long.offlineReport();
    return joinReports([...this.parts, { report, fromS: this.long.presentSinceS, untilS: Infinity }]);
  }
}
