import type { LaterWords } from '../catalogue.ts';
import { plural } from './grammar.ts';

export const solverWarning: LaterWords['solverWarning'] = {
  noMarks:
    'Noch keine Marke hat eine brauchbare Länge. Setz eine Marke bei einer Resonanz und lies ihre Länge ab.',
  noOrders: 'Keine Wahl von Ordnungen passt zu diesen Marken.',
  contradiction:
    'Mit diesen Ordnungen hätte eine längere Säule eine kürzere Welle. Prüfe die Längen und die festgelegten Ordnungen.',
  outlier: (mark, cause) => `${mark} passt nicht und zählt in der Ausgleichsrechnung nicht mit. ${cause}`,
  inconsistent: (marks) =>
    `Die Marken widersprechen sich, und es ist nicht zu erkennen, welche davon falsch ist: ${marks}. Wiederhole diese.`,
  bracketWide: (mark) =>
    `Die zwei Längen liegen zu weit auseinander, um die Resonanz gut zu bestimmen: ${mark}.`,
  nothingFits:
    'Die meisten dieser Längen passen zu keiner Resonanz mit einer einzigen Geschwindigkeit und Mündungskorrektur. Prüfe die Einheit der Längen, die Gabel und die Enden, bevor du das Ergebnis benutzt.',
  nothingFitsDiameter:
    'Die meisten dieser Längen passen zu keiner Resonanz mit einer einzigen Geschwindigkeit und Mündungskorrektur. Prüfe die Einheit der Längen und des Durchmessers, die Gabel und die Enden, bevor du das Ergebnis benutzt.',
  columnType: {
    closed:
      'Diese Längen passen nicht zu einer beidseitig offenen Säule, aber zu einer einseitig geschlossenen. Prüfe, welche Enden offen waren.',
    open: 'Diese Längen passen nicht zu einer einseitig geschlossenen Säule, aber zu einer beidseitig offenen. Prüfe, welche Enden offen waren.',
  },
  lengthUnit: (unit) =>
    `So passen diese Längen nicht, aber sie würden passen, wenn sie in ${unit} wären. Prüfe die Einheit.`,
  orderAmbiguous: (marks) =>
    `Mehr als eine Wahl von Ordnungen passt: ${marks}. Setz eine Marke bei einer benachbarten Resonanz, oder leg die Ordnung fest.`,
  orderOf: (mark, order, percent, rival) =>
    `${mark}: Ordnung ${order} (${percent}\u00a0%)${rival === null ? '' : `, sonst ${rival}`}`,
  orderDoubtful: (marks) =>
    `Die festgelegte Ordnung passt nicht zu Luft in diesem Rohr: ${marks}. Lass die Ordnung auf „auto“, oder prüfe die Gabel.`,
  skippedOrders: (gaps) => `Hier fehlt eine Marke: ${gaps}. Wurde eine Resonanz übersehen?`,
  gap: {
    closed: (orders, hertz) => `Ordnung ${orders} (${hertz}\u00a0Hz, geschlossen)`,
    open: (orders, hertz) => `Ordnung ${orders} (${hertz}\u00a0Hz, offen)`,
  },
  otherExplanation: (others, percentAsNoted) =>
    `Diese Zahlen könnten auch etwas anderes bedeuten: ${others}; wie notiert ${percentAsNoted}\u00a0%. Prüfe Gabel, Einheit und Gas, oder setz eine Marke bei der ersten Resonanz.`,
  odds: (explanation, percent) => `${explanation} (${percent}\u00a0%)`,
  otherUnit: (unit) => `Längen in ${unit}`,
  otherFork: (hertz) => `eine Gabel mit ${hertz}\u00a0Hz`,
  otherGas: (gas) => `${gas} im Rohr`,
  exactRepeats: (copies) =>
    `${plural(copies, 'Eine Marke stimmt', `${copies} Marken stimmen`)} in allem mit einer anderen überein und ${plural(copies, 'zählt', 'zählen')} nicht noch einmal. Doppelt eingefügt? Lass ${plural(copies, 'sie', 'diese')} aus. Zweimal abgelesen? Schreib in der Tabelle unter made_at, wann.`,
  forksAlike: (forks) =>
    `${forks} gelten als eine Gabel, die auf zwei Arten geschrieben ist. Wenn es zwei Gabeln sind, miss ihre Frequenzen und gib fork_uncertainty_hz an.`,
  hertz: (hertz) => `${hertz}\u00a0Hz`,
  tubeTooWide: (millimetres, hertz, ka) =>
    `Ein ${millimetres}\u00a0mm weites Rohr ist für ${hertz}\u00a0Hz zu weit: Der Schall darin ist keine ebene Welle mehr (ka = ${ka}), und die berechnete Mündungskorrektur gilt nicht. Nimm ein engeres Rohr oder eine tiefere Gabel.`,
  allUnchecked:
    'Nichts an diesen Marken könnte einen Ablesefehler verraten: Zwei Längen passen immer. Eine dritte Resonanz würde ihn zeigen.',
  unchecked: (marks) =>
    `Ein Ablesefehler würde hier nicht auffallen: ${marks}. Setz eine Marke bei noch einer Resonanz, oder lies noch einmal ab.`,
  speedOfAir: {
    cold: (celsius) =>
      `Das ist die Schallgeschwindigkeit in Luft von ${celsius}\u00a0°C. War der Raum so kalt? Wenn nicht, prüfe die Frequenz der Gabel, die Einheit der Längen und das Gas.`,
    warm: (celsius) =>
      `Das ist die Schallgeschwindigkeit in Luft von ${celsius}\u00a0°C. War der Raum so warm? Wenn nicht, prüfe die Frequenz der Gabel, die Einheit der Längen und das Gas.`,
  },
  speedOfNoAir: {
    cold: 'Keine Luft ist so kalt, wie sie für diese Geschwindigkeit sein müsste. Prüfe die Frequenz der Gabel, die Einheit der Längen und das Gas.',
    warm: 'Keine Luft ist so warm, wie sie für diese Geschwindigkeit sein müsste. Prüfe die Frequenz der Gabel, die Einheit der Längen und das Gas.',
  },
  scatter: (factor) =>
    `Die Längen streuen ${factor}-mal so stark wie angegeben oder angenommen; die Unsicherheit des Ergebnisses wird vergrößert.`,
  endImplausible: (millimetres) =>
    `Als Mündungskorrektur ergibt sich ${millimetres}\u00a0mm. Prüfe den Nullpunkt des Maßstabs und die Enden.`,
  endImplausibleInRadii: (millimetres, radii, usualRadii) =>
    `Als Mündungskorrektur ergibt sich ${millimetres}\u00a0mm, das ${radii}-Fache des Radius; üblich ist etwa das ${usualRadii}-Fache. Prüfe den Nullpunkt des Maßstabs, den Durchmesser und die Enden.`,
  speedImplausible: (mps, lowest, highest) =>
    `${mps}\u00a0m/s liegt außerhalb von ${lowest} bis ${highest}\u00a0m/s für Luft. Prüfe die Frequenz der Gabel und die Ordnungen.`,
  aboveTheory: (mps) =>
    `Das Ergebnis liegt ${mps}\u00a0m/s über der berechneten Geschwindigkeit, mehr als beide Unsicherheiten erlauben. Prüfe, was an der Mündung ist, die Längen und den Nullpunkt des Maßstabs, dann das Thermometer und die Frequenz der Gabel.`,
  belowTheory: (mps) =>
    `Das Ergebnis liegt ${mps}\u00a0m/s unter der berechneten Geschwindigkeit, mehr als beide Unsicherheiten erlauben. Prüfe, was an der Mündung ist, die Längen und den Nullpunkt des Maßstabs, dann das Thermometer und die Frequenz der Gabel.`,
  agreeingFork: (hertz) => `Eine Gabel mit ${hertz}\u00a0Hz würde passen: War es diese?`,
  implausible: 'Geschwindigkeit und Mündungskorrektur zusammen sind für Luft in einem Rohr ungewöhnlich.',
  tooFewMarks:
    'Eine Marke kann Mündungskorrektur und Wellenlänge nicht trennen. Setz eine Marke bei einer zweiten Resonanz.',
  endFromTheory:
    'Die Marken allein ergeben die Mündungskorrektur nicht gut. Benutzt wird, was über die Mündung des Rohrs bekannt ist, mit dessen Unsicherheit.',
  endUnknown: (expected, giveOrTake) =>
    `Die Marken ergeben die Mündungskorrektur nicht, und es ist kein Durchmesser angegeben. Angenommen wird wie bei üblichen Rohren: ${expected} ± ${giveOrTake}\u00a0mm.`,
  noDiameter: (lowestPercent, highestPercent) =>
    `Es ist kein Durchmesser angegeben, daher ist nicht bekannt, wie sehr die Rohrwand die Welle bremst (${lowestPercent} bis ${highestPercent}\u00a0%). Korrigiert wird das nicht; die Unsicherheit schließt es ein.`,
  someDiametersMissing: 'Wo kein Durchmesser angegeben ist, gilt der Mittelwert der anderen.',
  someTemperaturesMissing: 'Wo keine Lufttemperatur angegeben ist, gilt der Mittelwert der anderen.',
  noTemperature:
    'Es ist keine Lufttemperatur angegeben, daher lässt sich die Geschwindigkeit nicht mit der berechneten vergleichen.',
  ifAir: (celsius, giveOrTake) =>
    `Wenn das Gas Luft ist, gehört zu dieser Geschwindigkeit eine Temperatur von ${celsius} ± ${giveOrTake}\u00a0°C.`,
  airBeyondFormula:
    'Diese Luft liegt außerhalb von 0 bis 30\u00a0°C und 750 bis 1020\u00a0hPa, wo die Formel für die berechnete Geschwindigkeit geprüft wurde; deren Unsicherheit wird vergrößert.',
};

export const unusableMark: LaterWords['unusableMark'] = {
  outOfRange: {
    frequencyHz: (mark, lowest, highest, value) =>
      `${mark} zählt nicht mit: Die Frequenz muss zwischen ${lowest} und ${highest}\u00a0Hz liegen, ist aber ${value}\u00a0Hz.`,
    frequencyStandardUncertaintyHz: (mark, lowest, highest, value) =>
      `${mark} zählt nicht mit: Die Unsicherheit der Frequenz muss zwischen ${lowest} und ${highest}\u00a0Hz liegen, ist aber ${value}\u00a0Hz.`,
    lengthM: (mark, lowest, highest, value) =>
      `${mark} zählt nicht mit: Die Länge muss zwischen ${lowest} und ${highest}\u00a0m liegen, ist aber ${value}\u00a0m.`,
    otherLengthM: (mark, lowest, highest, value) =>
      `${mark} zählt nicht mit: Die andere Länge muss zwischen ${lowest} und ${highest}\u00a0m liegen, ist aber ${value}\u00a0m.`,
    lengthStandardUncertaintyM: (mark, lowest, highest, value) =>
      `${mark} zählt nicht mit: Die Unsicherheit der Länge muss zwischen ${lowest} und ${highest}\u00a0m liegen, ist aber ${value}\u00a0m.`,
    radiusM: (mark, lowest, highest, value) =>
      `${mark} zählt nicht mit: Der Radius des Rohrs muss zwischen ${lowest} und ${highest}\u00a0m liegen, ist aber ${value}\u00a0m.`,
    otherRadiusM: (mark, lowest, highest, value) =>
      `${mark} zählt nicht mit: Der andere Radius des Rohrs muss zwischen ${lowest} und ${highest}\u00a0m liegen, ist aber ${value}\u00a0m.`,
    temperatureC: (mark, lowest, highest, value) =>
      `${mark} zählt nicht mit: Die Lufttemperatur muss zwischen ${lowest} und ${highest}\u00a0°C liegen, ist aber ${value}\u00a0°C.`,
    humidityPct: (mark, lowest, highest, value) =>
      `${mark} zählt nicht mit: Die Luftfeuchtigkeit muss zwischen ${lowest} und ${highest}\u00a0% liegen, ist aber ${value}\u00a0%.`,
    pressurePa: (mark, lowest, highest, value) =>
      `${mark} zählt nicht mit: Der Luftdruck muss zwischen ${lowest} und ${highest} Pa liegen, ist aber ${value} Pa.`,
  },
  anotherGas: (mark, gas, firstGas) =>
    `${mark} zählt nicht mit: Das Gas ist hier ${gas}, bei der ersten Marke ${firstGas}. Werte jedes Gas für sich aus.`,
  orderNotWhole: (mark, order) =>
    `${mark} zählt nicht mit: Die Ordnung muss eine ganze Zahl über 0 sein, ist aber ${order}.`,
  air: (mark) =>
    `${mark} zählt nicht mit: Temperatur, Feuchtigkeit und Druck der Luft können nicht alle stimmen.`,
};
