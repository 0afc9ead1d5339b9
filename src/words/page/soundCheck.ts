import type { ListeningWarning } from '../../session/hearing/listeningTypes.ts';
import { NO_SOUND_WORDS } from '../capture.ts';
import { fixed, roundPair, signed } from '../numbers.ts';
import { listeningWarningWords } from '../listening.ts';

/** One thing that the sound check has found out, before it is put into words. */
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

const NAMES = { raw: 'Raw sound', input: 'Input', room: 'Room' } as const;

export function soundFactWords(fact: SoundFact): { readonly name: string; readonly value: string } {
  return { name: NAMES[fact.kind], value: valueWords(fact) };
}

function valueWords(fact: SoundFact): string {
  switch (fact.kind) {
    case 'raw':
      return RAW[fact.state];
    case 'input':
      if (fact.state === 'warned') return listeningWarningWords(fact.warning);
      if (fact.state === 'nothing heard') return 'nothing heard yet';
      if (fact.state === 'silent') return NO_SOUND_WORDS;
      return `up to ${fixed(fact.loudestDb, 0)} dB (0 dB: a sine of full scale)${fact.isFaint ? '; very faint' : ''}`;
    case 'room':
      return fact.roomDb === null ? 'not heard yet' : `${fixed(fact.roomDb, 0)} dB at the fork’s pitch`;
  }
}

const RAW = {
  'not listening': 'begin to listen first',
  'nothing processes': 'yes, nothing processes this source',
  off: 'yes, the browser’s processing is off',
  'not said': 'the browser doesn’t say; do the gain check',
  'level changed': 'no: the browser changes the level. Try another browser or microphone',
} as const;

/** @param finding  null before any sounding gave a pitch */
export function forkFindingWords(finding: ForkFinding | null): string {
  if (finding === null) return 'strike it to find its real pitch';
  const { measuredHz, standardUncertaintyHz, stampedHz, decayTimeS } = finding;
  const pair = roundPair(measuredHz, standardUncertaintyHz);
  const offHz = measuredHz - stampedHz;
  const decay = decayTimeS === null ? '' : `; it falls to 1/e in ${fixed(decayTimeS, 1)} s`;
  const off = `${signed(offHz, 2)} Hz (${signed((100 * offHz) / stampedHz, 2)} %) from its stamp`;
  return `${pair.value} ± ${pair.uncertainty} Hz, ${off}${decay}`;
}
