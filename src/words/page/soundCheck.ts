import type { ListeningWarning } from '../../session/hearing/listeningTypes.ts';
import { laterWords, words } from '../inUse.ts';
import { fixed, roundPair, signed } from '../numbers.ts';
import { listeningWarningWords } from '../listening.ts';

/** One thing that the check of input and fork has found out, before it is put into words. */
export type SoundFact =
  | {
      readonly kind: 'raw';
      readonly state: 'not listening' | 'nothing processes' | 'off' | 'not said' | 'level changed';
    }
  | { readonly kind: 'input'; readonly state: 'warned'; readonly warning: ListeningWarning }
  | { readonly kind: 'input'; readonly state: 'nothing heard' }
  | { readonly kind: 'input'; readonly state: 'silent' }
  | {
      readonly kind: 'input';
      readonly state: 'heard';
      readonly loudestDb: number;
      readonly isFaint: boolean;
    }
  /** The room at the fork's pitch, dB (0 dB: a sine of amplitude 1); null before it was heard. */
  | { readonly kind: 'room'; readonly roomDb: number | null };

/** The fork's pitch as heard, against its stamp. */
export interface ForkFinding {
  readonly measuredHz: number;
  readonly standardUncertaintyHz: number;
  readonly stampedHz: number;
  /** Time in which the amplitude falls to 1/e, s; null where it can't be told. */
  readonly decayTimeS: number | null;
}

export function soundFactWords(fact: SoundFact): { readonly name: string; readonly value: string } {
  return { name: laterWords.soundFact.names[fact.kind], value: valueWords(fact) };
}

function valueWords(fact: SoundFact): string {
  const said = laterWords.soundFact;
  switch (fact.kind) {
    case 'raw':
      return said.raw[fact.state];
    case 'input': {
      if (fact.state === 'warned') return listeningWarningWords(fact.warning);
      if (fact.state === 'nothing heard') return said.nothingHeard;
      if (fact.state === 'silent') return words.noSound;
      const loudest = fixed(fact.loudestDb, 0);
      return fact.isFaint ? said.faint(loudest) : said.upTo(loudest);
    }
    case 'room':
      return fact.roomDb === null ? said.roomUnheard : said.room(fixed(fact.roomDb, 0));
  }
}

/** @param finding  null before any strike gave a frequency */
export function forkFindingWords(finding: ForkFinding | null): string {
  const said = laterWords.forkFinding;
  if (finding === null) return said.none;
  const { measuredHz, standardUncertaintyHz, stampedHz, decayTimeS } = finding;
  const pair = roundPair(measuredHz, standardUncertaintyHz);
  const offHz = measuredHz - stampedHz;
  const measured = said.measured(
    pair.value,
    pair.uncertainty,
    signed(offHz, 2),
    signed((100 * offHz) / stampedHz, 2),
  );
  return decayTimeS === null ? measured : said.withDecay(measured, fixed(decayTimeS, 1));
}
