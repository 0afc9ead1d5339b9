import type { LaterWords } from '../../catalogue.ts';
import { fixed } from '../../numbers.ts';

export const working: LaterWords['working'] = {
  heading: 'Rechnung',
  empty: 'Jeder Schritt erscheint hier mit seinen Zahlen, sobald eine Marke ihre Länge hat.',
  lead: 'So kannst du jeden Schritt von Hand nachrechnen.',
  letters: {
    L: 'am Maßstab abgelesene Länge, ohne die Nullpunktverschiebung',
    n: 'Ordnung der Resonanz',
    f: 'Frequenz der Gabel',
    λ: 'Wellenlänge',
    e: 'Mündungskorrektur',
    ℓ: 'Länge der Luftsäule mit Mündungskorrektur',
    v: 'Schallgeschwindigkeit im Rohr',
    w: 'Teil der Geschwindigkeit, den die Wände wegnehmen',
    c: 'Schallgeschwindigkeit in freier Luft',
    'χ²': 'Summe der Quadrate der Abweichungen, jede vorher durch ihre Unsicherheit geteilt',
    a: 'Teil der halben Breite, um den die Stelle neben der Resonanz liegen kann',
    b: 'halbe Breite der Resonanz',
    q: 'Anstieg über die Gabel allein, als Verhältnis der Amplituden',
    u: 'Standardunsicherheit',
    U: 'erweiterte Unsicherheit, k·u',
    t: 'Lufttemperatur',
    h: 'relative Luftfeuchtigkeit',
    p: 'Luftdruck',
    γ: 'Verhältnis der beiden spezifischen Wärmen des Gases',
    R: 'Gaskonstante',
    T: 'absolute Temperatur',
    M: 'molare Masse des Gases',
    Δ: 'Unterschied der beiden Geschwindigkeiten',
  },
};

export const budget: LaterWords['budget'] = {
  region: 'Unsicherheitsbudget',
  heading: 'Woher die Unsicherheit kommt',
  table: 'Zeilen des Budgets',
};

export const fit: LaterWords['fit'] = {
  heading: 'Ausgleichsgerade',
  lead: 'Die Steigung ist die Geschwindigkeit im Rohr; wie weit unter null die Gerade beginnt, ist die Mündungskorrektur (bei offenen Säulen das Doppelte davon).',
};

export const nextMarks: LaterWords['nextMarks'] = {
  heading: 'Was als Nächstes?',
  lead: 'Marken, die mit deinen Gabeln die Unsicherheit am meisten verkleinern würden.',
  none: 'Setz zuerst eine Marke bei einer Resonanz, mit ihrer Länge.',
};

export const circle: LaterWords['circle'] = {
  heading: 'Warum die lauteste Stelle nicht die Resonanz ist',
  lead: 'Das Mikrofon hört zwei Töne gleicher Frequenz: den der Gabel und den der Säule. Geht die Länge durch die Resonanz, dreht sich die Phase des Säulentons; so läuft die Summe beider auf einem Kreis. Die Resonanz liegt dem Ton der Gabel gegenüber; die lauteste Stelle ist der Punkt, der am weitesten von null entfernt ist.',
  mark: 'Resonanz von',
  own: (name) => `Das ist der gehörte Kreis: ${name}.`,
  example:
    'Ein Beispiel, noch nicht deins: Der Ton der Säule ist 1,5-mal so stark wie der der Gabel und eilt ihm um 60° voraus. Schieb durch eine Resonanz, während diese Seite zuhört: Zu ihrer Marke gehört dann dein eigener Kreis.',
  tooLong: {
    inHalfWidths: (halfWidths, louderDb) =>
      `Die lauteste Stelle liegt ${fixed(halfWidths, 2)} halbe Breiten neben der Resonanz und ist ${louderDb}\u00a0dB lauter: Eine Säule, die man dort abliest, ist zu lang.`,
    inMillimetres: (halfWidths, mm, louderDb) =>
      `Die lauteste Stelle liegt ${fixed(halfWidths, 2)} halbe Breiten (${mm}\u00a0mm) neben der Resonanz und ist ${louderDb}\u00a0dB lauter: Eine Säule, die man dort abliest, ist zu lang.`,
  },
  tooShort: {
    inHalfWidths: (halfWidths, louderDb) =>
      `Die lauteste Stelle liegt ${fixed(halfWidths, 2)} halbe Breiten neben der Resonanz und ist ${louderDb}\u00a0dB lauter: Eine Säule, die man dort abliest, ist zu kurz.`,
    inMillimetres: (halfWidths, mm, louderDb) =>
      `Die lauteste Stelle liegt ${fixed(halfWidths, 2)} halbe Breiten (${mm}\u00a0mm) neben der Resonanz und ist ${louderDb}\u00a0dB lauter: Eine Säule, die man dort abliest, ist zu kurz.`,
  },
  alike: 'Hier sind die lauteste Stelle und die Resonanz dieselbe: Beide Töne schwingen im Takt.',
  nowhere: 'Hier schwächt der Ton der Säule den der Gabel nur: Keine Stelle ist die lauteste.',
  noMillimetres:
    'Auch in Millimetern, sobald der Durchmesser des Rohrs und die Ordnung der Resonanz bekannt sind.',
  stays:
    'Solange Gabel, Hand und Mikrofon bleiben, wie sie sind, ist die Abweichung bei jeder Resonanz gleich gerichtet: Durch Wiederholen mittelt sie sich nicht heraus. Wer abliest, wenn diese Seite „Hier“ zeigt, vermeidet sie.',
};
