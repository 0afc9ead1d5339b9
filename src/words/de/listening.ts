import type { FirstWords } from '../catalogue.ts';

/** "einmal", "2-mal". */
const times = (count: number): string => (count === 1 ? 'einmal' : `${count}-mal`);

export const listening: FirstWords['listening'] = {
  between: (fromS, toS, said) => `Zwischen ${fromS} und ${toS}\u00a0s: ${said}`,
  slower: 'Schieb langsamer: eine Handbreit in vier Sekunden.',
  noFork: (toleranceHz, nominalHz) =>
    `Es war kein gleichmäßiger Ton bis ${toleranceHz}\u00a0Hz neben ${nominalHz}\u00a0Hz zu hören: Prüfe die Frequenz, die auf der Gabel steht, schlag stärker an oder halte die Gabel näher ans Mikrofon.`,
  otherFork: (toleranceHz, nominalHz, otherHz) =>
    `Es war kein gleichmäßiger Ton bis ${toleranceHz}\u00a0Hz neben ${nominalHz}\u00a0Hz zu hören, aber einer bei etwa ${otherHz}\u00a0Hz: Prüfe die Frequenz, die auf der Gabel steht, und die hier gewählte. Ist es die richtige Gabel, liegt sie weit neben ihrer Angabe: beschwert, eingekerbt oder lose.`,
  offStamp: (measuredHz, offsetHz, isAbove) =>
    `Die Gabel klingt mit ${measuredHz}\u00a0Hz, ${offsetHz}\u00a0Hz ${isAbove ? 'über' : 'unter'} ihrer Angabe: Nimm die gemessene Frequenz, und sieh nach, ob die Gabel Kerben hat.`,
  beating: (beatHz, isAbove) =>
    `Eine andere Gabel mit fast derselben Frequenz klingt mit, ${beatHz}\u00a0Hz ${isAbove ? 'über' : 'unter'} deiner: Es entsteht eine Schwebung mit ${beatHz}\u00a0Hz. Lass sie dämpfen oder warte, bis sie verklungen ist.`,
  forkTurned: (turns, fromS) =>
    `Ab ${fromS}\u00a0s verschwand der Ton ${times(turns)} und kam umgekehrt wieder, wie wenn man die Gabel um ihren Stiel dreht: Halte immer dieselbe Zinke zur Mündung.`,
  tooFast: (halfPowerS, slower) =>
    `Die Resonanzen waren nach ${halfPowerS}\u00a0s vorbei, zu schnell: Die Säule hatte keine Zeit, ihre volle Lautstärke zu erreichen. ${slower}`,
  tooFastAt: (timeS, slower) =>
    `Bei ${timeS}\u00a0s ging eine Resonanz zu schnell vorbei: Die Säule hatte keine Zeit, ihre volle Lautstärke zu erreichen, und vielleicht fehlt ihre Marke. ${slower}`,
  clipping: (count) =>
    `Der Eingang war ${times(count)} zu laut: Rück das Mikrofon weiter weg oder verringere seine Verstärkung.`,
  overdriven: (percent, count) =>
    `Der Ton war ${times(count)} schon vor dem Aufnahmegerät übersteuert, bei ${percent}\u00a0% der Vollaussteuerung: Rück das Mikrofon weiter weg oder verringere seine Verstärkung.`,
  tooFaint: (percent) =>
    `Der lauteste Moment erreicht nur ${percent}\u00a0% der Vollaussteuerung: Erhöhe die Verstärkung des Mikrofons oder rück es näher an die Mündung der Säule.`,
  gainPumping:
    'Der Raum wird leiser, wenn die Gabel laut ist: Eine automatische Verstärkung verändert die Lautstärke, Pegel sind so nicht vergleichbar. Schalte automatische Verstärkung, Rauschunterdrückung und Echounterdrückung des Mikrofons aus.',
  tooShort:
    'Die Aufnahme ist kürzer als eine Sekunde: zu kurz, um darin eine Gabel zu finden. Nimm einen ganzen Durchgang auf.',
  silent: 'Es kommt gar kein Ton an: Das Mikrofon ist stumm, oder es ist das falsche gewählt.',
  gap: (losses, timeS) =>
    `Ton ging ${times(losses)} verloren, zuerst bei ${timeS}\u00a0s: Dort wird keine Resonanz markiert. Schließ andere Programme und schieb dort noch einmal.`,
  dropouts: (count) =>
    `Der Ton brach ${times(count)} ab und kam wieder: Die Pegel dort sind zu niedrig. Schließ andere Programme oder nimm ein Mikrofon mit Kabel.`,
  dropoutsFrom: (count, timeS) =>
    `Der Ton brach ${times(count)} ab und kam wieder, zuerst bei ${timeS}\u00a0s: Die Pegel dort sind zu niedrig. Schließ andere Programme oder nimm ein Mikrofon mit Kabel.`,
  narrowBand: (edgeKhz) =>
    `Über ${edgeKhz}\u00a0kHz ist nichts: typisch für Gespräche weit weg vom Mikrofon, für ein Headset im Anrufmodus oder für die Aufnahme eines Telefons. Die Frequenz der Gabel liegt darunter und wird gehört. Wenn Pegel seltsam aussehen, mach den Verstärkungstest oder wähle das Mikrofon des Geräts.`,
  highBandMissing: (edgeKhz) =>
    `Über ${edgeKhz}\u00a0kHz ist nichts: typisch für einen ruhigen Raum, für Rauschunterdrückung oder für eine stark komprimierte Datei. Die Frequenz der Gabel liegt darunter und wird gehört. Wenn Pegel seltsam aussehen, mach den Verstärkungstest; nimm möglichst als WAV auf.`,
  floorFell: (fallDb) =>
    `Die Stille zwischen den Tönen fiel um ${fallDb}\u00a0dB unter das anfängliche Raumgeräusch: Entweder wurde der Raum ruhig, oder eine Rauschunterdrückung hat eingesetzt. Mach mit einem Mikrofon den Verstärkungstest, bevor du einem Pegel traust.`,
  offset: (percent) =>
    `Der Ton hat einen Gleichanteil von ${percent}\u00a0% der Vollaussteuerung: ein Fehler der Soundkarte oder ihres Steckers. Die Pegel bei der Frequenz der Gabel stimmen trotzdem; versuch einen anderen Eingang, wenn der Ton übersteuert.`,
  hum: (mainsHz, levelDb) =>
    `Das Netzbrummen bei ${mainsHz}\u00a0Hz ist laut (${levelDb}\u00a0dB): Zieh das Ladegerät ab, oder geh weg von Netzteilen und Lampen.`,
  cutOff: 'Das Ende dieser Datei fehlt: Sie wurde abgeschnitten. Was da ist, wird benutzt.',
};

export const unheardFrequency: FirstWords['unheardFrequency'] = {
  sampleRate: {
    what: (sampleRateHz, lowestHz, highestHz) =>
      `Dieser Ton hat eine Abtastrate von ${sampleRateHz}\u00a0Hz; diese Seite kann ${lowestHz} bis ${highestHz}\u00a0Hz benutzen.`,
    advice: (usualRates) => `Nimm mit ${usualRates}\u00a0Hz auf.`,
  },
  frequency: {
    what: (frequencyHz, sampleRateHz, lowestHz, highestHz) =>
      `Eine Frequenz von ${frequencyHz}\u00a0Hz ist bei der Abtastrate dieses Tons von ${sampleRateHz}\u00a0Hz nicht zu hören, nur ${lowestHz} bis ${highestHz}\u00a0Hz.`,
    advice: (usualRates) =>
      `Nimm mit ${usualRates}\u00a0Hz auf (das Mikrofon eines Headsets liefert oft weniger) oder wähle eine andere Frequenz. Längen kannst du trotzdem eintippen.`,
  },
};
