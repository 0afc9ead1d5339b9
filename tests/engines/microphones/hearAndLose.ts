import type { SlideRecording } from '../../support/slideRecording.ts';
import type { Person } from '../person.ts';
import type { SoundServer } from './soundServer.ts';

/** Between two flags against the true time between their passages, s: a person reads the rule long after. */
const FLAG_TOLERANCE_S = 0.5;
/** A page that listens says within so many milliseconds that its microphone has gone. */
const GONE_WITHIN_MS = 5000;
/**
 * Chromium listens to a stand-in that it calls the default and that stays when nothing is behind it any more: only the
 * silence tells.
 */
const GONE = /The microphone was unplugged or switched off|No sound at all arrives from the microphone/;
/** Until the page knows its room, ms. */
const ROOM_MS = 3000;
/** Until what was heard last is flagged, ms. */
const LAST_FLAG_MS = 2000;

/**
 * Hears a recording through the machine's microphone, loses the microphone and gets it back.
 * @returns what was measured, in words
 * @throws Error that names what went wrong
 */
export async function hearAndLose(
  person: Person,
  sound: SoundServer,
  wav: string,
  truth: SlideRecording,
): Promise<string[]> {
  await person.click('radio', 'Microphone');
  await person.click('button', 'Listen');
  await person.waitFor('button', 'Stop');
  await person.wait(ROOM_MS);
  await sound.play(wav);
  await person.wait(LAST_FLAG_MS);
  const apartS = await flagsApart(person, truth);
  const before = await person.said(GONE);
  if (before !== null) throw new Error(`Told before it was unplugged: ${before}`);
  const startMs = performance.now();
  sound.unplug();
  const said = await person.until('a word on the microphone', () => person.said(GONE), GONE_WITHIN_MS);
  const goneMs = performance.now() - startMs;
  sound.plugIn();
  if ((await person.count('button', 'Start again')) > 0) {
    await person.click('button', 'Start again');
  } else {
    await person.click('button', 'Stop');
    await person.click('button', 'Listen');
  }
  await person.waitFor('button', 'Stop');
  await sound.play(wav);
  await person.wait(LAST_FLAG_MS);
  const marks = await person.count('group', /^Mark \d+$/);
  if (marks < 3) throw new Error(`After it was plugged in again nothing was flagged: ${marks} marks in all.`);
  return [
    `flags ${apartS.toFixed(2)} s apart`,
    `unplugged: told after ${(goneMs / 1000).toFixed(1)} s, “${GONE.exec(said)?.[0] ?? said}”`,
    `plugged in again: ${marks} marks`,
  ];
}

/** Time between the flags of the two passages, s: when the file began is not known to the page. */
async function flagsApart(person: Person, truth: SlideRecording): Promise<number> {
  const marks = await person.count('group', /^Mark \d+$/);
  const timesS: number[] = [];
  for (let mark = 1; mark <= marks; mark += 1) timesS.push(await person.flagTimeS(mark));
  const [firstS = NaN, secondS = NaN] = truth.passages.map(({ timeS }) => timeS);
  const trueS = secondS - firstS;
  const apartS = timesS
    .flatMap((one) => timesS.map((other) => other - one))
    .find((seconds) => Math.abs(seconds - trueS) < FLAG_TOLERANCE_S);
  if (apartS === undefined) {
    throw new Error(
      `Flags at ${timesS.join(', ')} s, where two were to be ${trueS.toFixed(2)} s apart. ${await person.page.evaluate<string>('benchHand.wordsIn(document.body)')}`,
    );
  }
  return apartS;
}
