import type { FirstWords } from '../catalogue.ts';
import { counted, plural } from './grammar.ts';

/** "1 rezonans", "2 rezonanse", "5 rezonansów". */
const resonancesOf = (count: number): string => counted(count, 'rezonans', 'rezonanse', 'rezonansów');

/** "1 niepewny", "2 niepewne", "5 niepewnych": resonances that may be one. */
const uncertainOf = (count: number): string => counted(count, 'niepewny', 'niepewne', 'niepewnych');

export const notice: FirstWords['notice'] = {
  undone: (step) => `Cofnięto: ${step}.`,
  redone: (step) => `Ponowiono: ${step}.`,
  markDeleted: 'Usunięto znacznik. Możesz go przywrócić pod listą.',
  resonanceFound: (waiting) =>
    waiting === 1
      ? 'Znaleziono rezonans: wpisz jego długość.'
      : `Znaleziono rezonans: do wpisania ${plural(waiting, 'jest', 'są', 'jest')} ${counted(waiting, 'długość', 'długości', 'długości')}.`,
  resonanceMaybe: (percent) =>
    `Może to rezonans, pewność ${percent}\u00a0%. Przejdź przez niego jeszcze raz albo naciśnij K, żeby go zachować, jeśli też go słyszysz.`,
  resonanceAgain: (mark) => `Znowu ten sam rezonans: liczy się ze znacznikiem ${mark}.`,
  resonanceJoined: (mark) =>
    `Znaleziono rezonans: połączono go ze znacznikiem ${mark}. Jeśli to inny rezonans, wybierz „Rozdziel” na liście znaczników.`,
  notMarked:
    'Usłyszano rezonans, ale nie dostał znacznika: dźwięk się w nim urwał. Możesz go jeszcze dodać pod „Czy poziomowi można ufać?”.',
  gainCheckPassed:
    'Test wzmocnienia: bez zmian. Kamerton zanikał równo podczas rozmowy. Zapisano z doświadczeniem.',
  gainCheckFailed:
    'Test wzmocnienia: zmienione. Coś zmienia poziom. Dopóki tak jest, nowe znaczniki są wątpliwe.',
  noneInRecording: 'W tym nagraniu nie znaleziono rezonansu.',
  foundInRecording: (resonances) => `W nagraniu znaleziono ${resonancesOf(resonances)}.`,
  foundToType: (resonances) => `W nagraniu znaleziono ${resonancesOf(resonances)}. Wpisz długości.`,
  maybesInRecording: (resonances, maybes) =>
    `W nagraniu znaleziono ${resonancesOf(resonances)} i jeszcze ${uncertainOf(maybes)}.`,
  maybesToType: (resonances, maybes) =>
    `W nagraniu znaleziono ${resonancesOf(resonances)} i jeszcze ${uncertainOf(maybes)}. Wpisz długości.`,
  onlyMaybes: (maybes) => `W nagraniu nie ma pewnego rezonansu, tylko ${uncertainOf(maybes)}.`,
  recordingHeardAgain: 'Nagranie jest analizowane jeszcze raz, od początku, dla tego kamertonu.',
  strikeVoid: 'To uderzenie zostało przerwane i się nie liczy: uderz w kamerton jeszcze raz.',
  openElsewhere:
    'To doświadczenie jest otwarte w innej karcie. Pracuj nad nim tutaj albo otwórz kopię: przyciski są u góry strony.',
  busyElsewhere: 'To doświadczenie jest otwarte w innej karcie: najpierw je tam zamknij.',
  takenElsewhere: 'Pracujesz teraz nad tym doświadczeniem w innej karcie. Ta karta tylko je pokazuje.',
  storeErased:
    'Usunięto wszystko, co zapisano w tej przeglądarce. Otwarte doświadczenie zapisano od nowa. Innych doświadczeń i zapisanego dźwięku nie ma już na tym urządzeniu.',
  lastUnreadable: (why) =>
    `Nie udało się odczytać ostatniego doświadczenia: ${why} Jest zapisane bez zmian w widoku Archiwum.`,
  changesNotSaved: (title, why) => `Nie zapisano ostatnich zmian w „${title}”: ${why}`,
  notOpened: (why) => `Nie można otworzyć tego doświadczenia: ${why}`,
  notDuplicated: (why) => `Nie można skopiować tego doświadczenia: ${why}`,
  copyOpen: (title) => `Pracujesz teraz nad „${title}”. Oryginał zostaje na liście.`,
  lessonOpen: 'Lekcja jest przygotowana. Poprzednie doświadczenie jest zapisane na liście w widoku Archiwum.',
  lessonAgain:
    'Ta lekcja była tu już zaczęta: jest otwarta w takim stanie jak ostatnio. Dla innej grupy wybierz „Nowe, ten sam układ” w widoku Archiwum.',
  lessonWithout: (forks, lowestHz, highestHz) =>
    `Lekcja jest przygotowana, ale bez tych kamertonów: ${forks}. Ta strona słyszy kamertony od ${lowestHz} do ${highestHz}\u00a0Hz.`,
  lessonRevealed: (experiments) =>
    `${counted(experiments, 'doświadczenie', 'doświadczenia', 'doświadczeń')} z tej lekcji ${plural(experiments, 'pokazuje', 'pokazują', 'pokazuje')} teraz wszystko.`,
  noSuchCode:
    'Ten kod nie otwiera żadnej lekcji na tym urządzeniu. Wpisz go dokładnie tak, jak podał nauczyciel.',
  experimentDeleted: 'Usunięto doświadczenie. Możesz je przywrócić pod listą.',
  soundNowhere: 'Nie można zapisać dźwięku: przeglądarka nie zapisuje teraz nic dla tej strony.',
  soundLimit:
    'Nie ma już miejsca na dźwięk, więc zapisywanie zatrzymano. Zapisz część w plikach i usuń ją tutaj (Archiwum).',
  soundStopped: (why) => `Zapisywanie dźwięku zatrzymano. ${why}`,
};
