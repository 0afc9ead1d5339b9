import type { FirstWords } from '../catalogue.ts';
import { counted, plural } from './grammar.ts';

export const notice: FirstWords['notice'] = {
  undone: (step) => `Rückgängig gemacht: ${step}.`,
  redone: (step) => `Wiederholt: ${step}.`,
  markDeleted: 'Marke gelöscht. Unter der Liste kannst du sie zurückholen.',
  resonanceFound: (waiting) =>
    waiting === 1
      ? 'Resonanz gefunden: Tipp ihre Länge ein.'
      : `Resonanz gefunden: ${waiting} Längen sind einzutippen.`,
  resonanceMaybe: (percent) =>
    `Vielleicht eine Resonanz, zu ${percent}\u00a0% sicher. Schieb noch einmal hindurch, oder drück K, um sie zu behalten, wenn du sie auch gehört hast.`,
  resonanceAgain: (mark) => `Noch einmal dieselbe Resonanz: Sie zählt zu Marke ${mark}.`,
  resonanceJoined: (mark) =>
    `Resonanz gefunden: mit Marke ${mark} verbunden. Ist es eine andere Resonanz, wähle „Trennen“ in der Liste der Marken.`,
  notMarked:
    'Eine Resonanz wurde gehört, aber nicht markiert: Der Ton brach darin ab. Du kannst sie noch markieren, unter „Ist auf den Pegel Verlass?“.',
  gainCheckPassed:
    'Verstärkungstest: unverändert. Die Gabel klang gleichmäßig ab, während ihr gesprochen habt. Mit dem Experiment gespeichert.',
  gainCheckFailed:
    'Verstärkungstest: verändert. Etwas verändert den Pegel. Bis das behoben ist, sind neue Marken zweifelhaft.',
  noneInRecording: 'In dieser Aufnahme wurde keine Resonanz gefunden.',
  foundInRecording: (resonances) =>
    `${counted(resonances, 'Resonanz', 'Resonanzen')} in der Aufnahme gefunden.`,
  foundToType: (resonances) =>
    `${counted(resonances, 'Resonanz', 'Resonanzen')} in der Aufnahme gefunden. Tipp ${plural(resonances, 'die Länge', 'die Längen')} ein.`,
  maybesInRecording: (resonances, maybes) =>
    `${counted(resonances, 'Resonanz', 'Resonanzen')} in der Aufnahme gefunden, und vielleicht noch ${maybes}.`,
  maybesToType: (resonances, maybes) =>
    `${counted(resonances, 'Resonanz', 'Resonanzen')} in der Aufnahme gefunden, und vielleicht noch ${maybes}. Tipp die Längen ein.`,
  onlyMaybes: (maybes) =>
    `Nichts in der Aufnahme ist sicher eine Resonanz, ${counted(maybes, 'Stelle ist', 'Stellen sind')} aber vielleicht eine.`,
  recordingHeardAgain: 'Die Aufnahme wird für diese Gabel noch einmal ausgewertet, von Anfang an.',
  strikeVoid: 'Dieser Anschlag wurde unterbrochen und zählt nicht: Schlag die Gabel noch einmal an.',
  openElsewhere:
    'Dieses Experiment ist in einem anderen Tab offen. Arbeite hier daran weiter oder öffne eine Kopie: Die Knöpfe stehen oben auf der Seite.',
  busyElsewhere: 'Dieses Experiment ist in einem anderen Tab offen: Schließ es dort zuerst.',
  takenElsewhere: 'Du arbeitest an diesem Experiment jetzt in einem anderen Tab. Dieser zeigt es nur noch.',
  storeErased:
    'Alles, was in diesem Browser gespeichert war, wurde gelöscht. Das offene Experiment ist wieder gespeichert. Andere Experimente und gespeicherter Ton sind auf diesem Gerät nicht mehr da.',
  lastUnreadable: (why) =>
    `Das letzte Experiment ließ sich nicht lesen: ${why} Es ist unverändert gespeichert, unter Ablage.`,
  changesNotSaved: (title, why) => `Die letzten Änderungen an „${title}“ wurden nicht gespeichert: ${why}`,
  notOpened: (why) => `Dieses Experiment lässt sich nicht öffnen: ${why}`,
  notDuplicated: (why) => `Dieses Experiment lässt sich nicht kopieren: ${why}`,
  copyOpen: (title) => `Du arbeitest jetzt an „${title}“. Das Original bleibt in der Liste.`,
  lessonOpen:
    'Die Unterrichtsstunde ist eingerichtet. Dein Experiment von vorher ist gespeichert, in der Liste unter Ablage.',
  lessonAgain:
    'Diese Unterrichtsstunde hast du hier schon begonnen: Sie ist offen, wie du sie verlassen hast. Für eine andere Gruppe wähle „Neu, gleicher Aufbau“ unter Ablage.',
  lessonWithout: (forks, lowestHz, highestHz) =>
    `Die Unterrichtsstunde ist eingerichtet, aber ohne diese Gabeln: ${forks}. Diese Seite hört Gabeln von ${lowestHz} bis ${highestHz}\u00a0Hz.`,
  lessonRevealed: (experiments) =>
    `${counted(experiments, 'Experiment', 'Experimente')} dieser Unterrichtsstunde ${plural(experiments, 'zeigt', 'zeigen')} jetzt alles.`,
  noSuchCode:
    'Dieser Code passt zu keiner Unterrichtsstunde auf diesem Gerät. Tipp ihn genau so ein, wie deine Lehrkraft ihn angegeben hat.',
  experimentDeleted: 'Experiment gelöscht. Unter der Liste kannst du es zurückholen.',
  soundNowhere: 'Ton lässt sich nicht speichern: Dieser Browser speichert zurzeit nichts für diese Seite.',
  soundLimit:
    'Für mehr Ton ist kein Platz, er wird daher nicht mehr gespeichert. Speichere einen Teil als Dateien und lösche ihn hier (Ablage).',
  soundStopped: (why) => `Es wird kein Ton mehr gespeichert. ${why}`,
};
