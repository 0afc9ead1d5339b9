import { fixed } from '../../numbers.ts';
import type { LaterWords } from '../../catalogue.ts';

export const check: LaterWords['check'] = {
  ways: 'Prüfungen',
  sound: 'Eingang und Gabel',
  gain: 'Verstärkung',
  length: 'Eine Länge',
  tone: 'Gespielter Ton',
  sweep: 'Sweep',
};

export const checkLength: LaterWords['checkLength'] = {
  heading: 'Eine Länge prüfen',
  lead: 'Die Säule bleibt, wie sie ist. Schlag die Gabel an, halte sie abwechselnd an die Mündung und weg davon: Diese Seite sagt, ob es bei dieser Länge Resonanz gibt.',
  begin: 'Prüfung beginnen',
  again: 'Von vorn beginnen',
  end: 'Prüfung beenden',
  listenFirst: 'Drück zuerst „Zuhören“.',
};

export const gainCheck: LaterWords['gainCheck'] = {
  name: 'Verstärkungstest',
  heading: 'Verändert etwas den Pegel?',
  lead: 'Die Sprachverarbeitung für Anrufe ändert die Lautstärke von selbst und entfernt, was keine Sprache ist, vor allem Stimmgabeln. In einem ruhigen Raum fällt das nicht auf.',
  browserSays: 'Was der Browser sagt',
  steps: [
    'Mach Säule und Mikrofon fest.',
    'Schlag die Gabel einmal an Gummi an und setz ihren Stiel nahe am Mikrofon auf.',
    'Halte zehn Sekunden still, während jemand spricht.',
  ],
  begin: 'Verstärkungstest beginnen',
  again: 'Von vorn beginnen',
  end: 'Verstärkungstest beenden',
  listenFirst: 'Wähle zuerst „Mikrofon“ und drück „Zuhören“.',
  help: 'Hilfe zum Mikrofon, auch für die Schuladministration',
  microphone: 'Mikrofon',
  systemsChoice: 'Wahl des Systems',
};

export const soundCheck: LaterWords['soundCheck'] = {
  heading: 'Eingang und Gabel',
  lead: 'Drück „Zuhören“, sei drei Sekunden still, schlag dann die Gabel an und halte sie vom Rohr weg.',
  fork: 'Gabel',
  use: 'Gemessene Frequenz in der Ausgleichsrechnung benutzen',
  used: 'Jetzt zählt die gemessene Frequenz in der Ausgleichsrechnung.',
  caution: 'Schlag die Gabel an Gummi oder einer Schuhsohle an, nie an Glas oder einer harten Kante.',
  usePractice: {
    heading: 'Die Frequenz der Übungsgabel benutzen?',
    message:
      'Gehört wurde die Übungsgabel. Ihre Frequenz würde für die Gabel dieses Experiments zählen, auch für Marken, die mit einer echten gemacht sind.',
    no: 'Gabel lassen, wie sie ist',
    yes: 'Benutzen',
  },
};

export const tone: LaterWords['tone'] = {
  heading: 'Gespielter Ton',
  lead: 'Statt einer Gabel: ein gleichmäßiger Sinuston aus einem Lautsprecher, der an die Mündung der Säule gehalten wird.',
  pitch: 'Frequenz des Tons',
  loudness: 'Lautstärke',
  loudnessNow: (percent) => `${percent}\u00a0% der Obergrenze`,
  play: 'Ton spielen',
  stop: 'Ton anhalten',
  mute: 'Handy oder Tablet spielen nichts, solange ihr Stummschalter an ist: Schalte ihn zuerst aus.',
  cannotPlay:
    'Der Ton lässt sich hier nicht spielen. Prüfe, ob ein Lautsprecher angeschlossen ist und kein anderes Programm ihn belegt, und versuch es noch einmal; wenn das nicht hilft, lade die Seite neu.',
  caution:
    'Der Ton beginnt leise und bleibt unter einer Obergrenze. Stell zuerst die Lautstärke des Geräts herunter, und spiel den Ton nie über Kopfhörer, die jemand trägt.',
};

export const sweepCard: LaterWords['sweepCard'] = {
  heading: 'Sweep bei fester Säule',
  lead: 'Die Länge bleibt; ein gespielter Ton steigt langsam und fällt wieder. Wo er auf dem Weg nach oben und auf dem nach unten am lautesten ist, ist die Säule in Resonanz.',
  length: 'Länge der Säule',
  lengthField: 'Länge der Säule beim Sweep',
  from: 'Sweep von',
  to: 'Sweep bis',
  practice: 'Übung: simuliert, ohne Ton',
  start: 'Sweep starten',
  cancel: 'Sweep abbrechen',
  takes: (durationS) => `dauert ${fixed(durationS, 0)}\u00a0s`,
  takesUnknown: 'dauert —',
  sweeping: 'Sweep läuft',
  soFar:
    'Was bis jetzt zu hören war. Eine Resonanz zeigt sich als Hügel, auf dem Weg nach oben und auf dem nach unten.',
  noLength: 'Tipp zuerst die Länge der Säule ein.',
  noResonance:
    'Keine Resonanz dieser Säule war sowohl auf dem Weg nach oben als auch auf dem nach unten zu hören. Rück Lautsprecher und Mikrofon näher an die Mündung, oder wähle einen größeren Frequenzbereich.',
  order: 'Ordnung',
  resonance: 'Resonanz',
  speed: 'Geschwindigkeit daraus',
  note: 'Zu den Notizen',
  noted: 'Das Ergebnis des Sweeps steht jetzt in den Notizen, unter Ablage.',
  doubts: 'Ist auf diesen Sweep Verlass?',
  inDoubt: 'Zweifelhaft.',
  notProven: 'Noch nicht geprüft.',
  caution:
    'Der Lautsprecher kommt an die Mündung der Säule, das Mikrofon daneben. Der Ton beginnt leise und bleibt unter einer Obergrenze. Stell zuerst die Lautstärke des Geräts herunter, und spiel den Ton nie über Kopfhörer, die jemand trägt.',
};
