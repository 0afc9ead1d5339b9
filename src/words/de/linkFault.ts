import type { FirstWords } from '../catalogue.ts';

export const linkFault: FirstWords['linkFault'] = {
  damaged: 'Dieser Link ist beschädigt. Lass ihn dir noch einmal geben und kopiere ihn ganz.',
  newer:
    'Diesen Link hat eine neuere Version dieser Seite gemacht. Lade die Seite neu, solange du online bist, und öffne den Link dann noch einmal.',
  noInflate:
    'Dieser Browser ist zu alt, um den Link zu lesen. Nimm Firefox 113, Safari 16.4, Chrome 80 oder neuer.',
  record: (why) => `Dieser Stundenlink ist nicht brauchbar: ${why} Bitte deine Lehrkraft um einen neuen.`,
};
