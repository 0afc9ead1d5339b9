import type { LaterWords } from '../catalogue.ts';

export const workingWhy: LaterWords['workingWhy'] = {
  difference: {
    closed: (farCm, nearCm) =>
      `Jede Säule wirkt um dasselbe e länger als ihr Rohr, also fällt e aus ${farCm}\u00a0cm − ${nearCm}\u00a0cm heraus: Keine Mündung kann λ verfälschen. (Resonanzlängen: OpenStax University Physics 1, Abschnitt 17.4.)`,
    open: (farCm, nearCm) =>
      `Jede Säule wirkt um dasselbe 2e länger als ihr Rohr, also fällt 2e aus ${farCm}\u00a0cm − ${nearCm}\u00a0cm heraus: Keine Mündung kann λ verfälschen. (Resonanzlängen: OpenStax University Physics 1, Abschnitt 17.4.)`,
  },
  noEnd:
    'Sie kann kaum null oder kleiner sein: Eine der zwei Längen ist falsch abgelesen, oder ihre Ordnung ist eine andere.',
  beyondRim: (endMm) =>
    `Die Luft dicht vor der Mündung schwingt mit, also kehrt die Welle erst ${endMm}\u00a0mm außerhalb dieses Rohrs um.`,
  beyondRimOfRadius: (endMm, radii) =>
    `Die Luft dicht vor der Mündung schwingt mit, also kehrt die Welle erst ${endMm}\u00a0mm außerhalb dieses Rohrs um; das ist das ${radii}-Fache seines Radius.`,
  endKnown: (known) =>
    `Eine Länge kann e und λ nicht trennen, also kommt e aus dem, was über diese Mündung bekannt ist: ${known}.`,
  theoryOfEnds: (thinRadii, flangedRadii) =>
    `Nach der Theorie ist e bei dünnem Rand das ${thinRadii}-Fache des Radius (Levine & Schwinger 1948), mit Flansch das ${flangedRadii}-Fache (Nomura 1960).`,
  ideal: 'Die Mündung ist als ideal angegeben, also bleibt e bei null.',
  endOfMouth: (endMm) =>
    `Die Marken allein ergeben e nicht; was über die Mündung bekannt ist, ergibt es, und e = ${endMm}\u00a0mm.`,
  endOfBoth: (marksMm, marksUncertaintyMm, endMm) =>
    `Die Marken allein sagen e = ${marksMm} ± ${marksUncertaintyMm}\u00a0mm. Was über die Mündung bekannt ist, kommt als weiterer Wert dazu; jeder zählt nach seiner Unsicherheit, und e = ${endMm}\u00a0mm.`,
  mouthSources: '(Mündungen: Levine & Schwinger 1948; Nomura 1960; Dalmont, Nederveen & Joly 2001.)',
  walls: (layerMm, hertz, radiusMm, percent) =>
    `An der Wand haftet die Luft und gibt Wärme ab, bei ${hertz}\u00a0Hz in einer Schicht von ${layerMm}\u00a0mm. In einem Rohr von ${radiusMm}\u00a0mm Radius kostet das ${percent}\u00a0% der Geschwindigkeit, in einem engeren mehr. (Zwikker & Kosten 1949, Kap. II; Keefe 1984.)`,
  loudest: (mm) =>
    `Das Mikrofon hört neben der Säule auch die Gabel. Ihre Summe ist dort am lautesten, wo beide am ehesten im Takt schwingen: nicht wo die Säule am stärksten schwingt, sondern daneben, hier mit einer Standardunsicherheit von ${mm}\u00a0mm. (Breite einer Resonanz: Fletcher & Rossing 1998, Kap. 8.)`,
  squares: (sumMps) =>
    `Unabhängige Fehler gehen selten alle in dieselbe Richtung, deshalb addieren sich ihre Quadrate: Die Summe ist nicht ${sumMps}\u00a0m/s, wie sie es ohne Quadrate wäre. (JCGM 100:2008, 5.1.2.)`,
  coverage: (degrees, factor, normalFactor) =>
    `u deckt etwa zwei von drei Fällen ab. Für 95 von 100 braucht es bei ν = ${degrees} den Faktor k = ${factor}; wäre u genau bekannt, wäre er ${normalFactor}. (JCGM 100:2008, G.3 und G.4.)`,
  warmth: (mpsPerDegree) =>
    `Warme Moleküle sind schneller, und sie tragen den Schall: c wächst mit der Wurzel der absoluten Temperatur, hier um ${mpsPerDegree}\u00a0m/s je Grad. (OpenStax University Physics 1, Abschnitt 17.2.)`,
  noEndCorrection: 'keine Mündungskorrektur, wie in Übungsaufgaben',
  inRadii: (value, uncertainty) => `Radius mal ${value} ± ${uncertainty}`,
};
