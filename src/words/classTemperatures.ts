import { laterWords } from './inUse.ts';

/** What the picture of a class's speeds over temperature shows. */
export interface SpokenTemperatures {
  /** Groups that it shows. */
  readonly groups: number;
  readonly hasOutlying: boolean;
  /** Whether it has room for every group's name. */
  readonly isNamed: boolean;
  readonly isTheoryShown: boolean;
}

/** For those who don't see the picture, and as its caption. */
export function classTemperaturesWords(shown: SpokenTemperatures): string {
  const said = laterWords.classTemperatures;
  return [
    said.shown(shown.groups),
    ...(shown.hasOutlying ? [said.outlying] : []),
    ...(shown.isNamed ? [] : [said.nameless]),
    ...(shown.isTheoryShown ? [said.band] : []),
  ].join(' ');
}
