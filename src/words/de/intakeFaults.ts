import type { LaterWords } from '../catalogue.ts';
import { fullCentimetres, fullMillimetres, megabytes } from '../numbers.ts';

export const pastedName: LaterWords['pastedName'] = 'Eingefügter Text';

export const otherFile: LaterWords['otherFile'] = {
  archive:
    'Das ist eine Datei einer Tabellenkalkulation oder ein ZIP-Archiv; diese Seite öffnet sie nicht. Speichere sie dort als CSV und öffne diese.',
  oldDocument:
    'Das ist eine alte Tabelle oder ein altes Dokument. Speichere es dort als CSV und öffne diese.',
  compressed: 'Diese Datei ist komprimiert. Entpacke sie zuerst.',
  pdf: 'Das ist ein PDF. Daraus lassen sich keine Zahlen lesen: Öffne die Tabelle, aus der es entstand.',
  picture: 'Das ist ein Bild. Daraus lassen sich keine Zahlen lesen.',
};

export const intakeFault: LaterWords['intakeFault'] = {
  empty: 'Die Datei ist leer.',
  largeExperiment: (bytes, mostBytes) =>
    `Die Datei hat ${megabytes(bytes)}; ein Experiment hat höchstens ${megabytes(mostBytes)}.`,
  largeTable: (bytes, mostBytes) =>
    `Die Datei hat ${megabytes(bytes)}; eine Tabelle mit Marken hat höchstens ${megabytes(mostBytes)}.`,
  unreadable:
    'Die Datei lässt sich nicht lesen. Wenn sie verschoben oder geändert wurde, wähle sie noch einmal.',
  longPaste: (millions) =>
    `Der Text hat ${millions} Millionen Zeichen: So lang ist keine Tabelle mit Marken.`,
  nested: 'Die Datei ist viel tiefer verschachtelt als ein Experiment: Sie ist etwas anderes.',
  noJson: (said) =>
    `Die Datei ist kein vollständiges JSON (${said}). Speichere sie auf dieser Seite noch einmal.`,
  classResult:
    'Das ist das Ergebnis einer ganzen Klasse: Es enthält keine Marken. Öffne die Dateien der Gruppen, oder die CSV-Datei der Klasse.',
  noResults: 'Die Tabelle hat eine Kopfzeile, aber keine Ergebnisse.',
  noUncertainty:
    'Ergebnisse brauchen eine Spalte standard_uncertainty_mps oder expanded_uncertainty_mps (95\u00a0%): Sonst lassen sie sich nicht gewichten.',
  noSpeed: (lowestMps, highestMps, typed) =>
    `muss ${lowestMps} bis ${highestMps}\u00a0m/s sein, nicht ${typed}. Prüf die Zahl und ihre Einheit.`,
  recordFull: (mostBytes) =>
    `mit dieser Zeile hätte die Datei des Experiments mehr als ${megabytes(mostBytes)}. Beginn für den Rest ein neues, oder kürze die Notizen.`,
  listFull: (most) =>
    `ein Experiment fasst höchstens ${most} Marken, Gabeln oder Orte. Beginn für den Rest ein neues.`,
  badOrder: (order, { lowest, highest }) =>
    `die Ordnung muss ${lowest} bis ${highest} sein, nicht ${order}. Lass sie leer, wenn du sie nicht weißt.`,
  otherTube: (diameterM, ownDiameterM) =>
    `dieses Rohr ist ${fullMillimetres(diameterM)}\u00a0mm weit, das des Experiments ${fullMillimetres(ownDiameterM)}\u00a0mm. Ein anderes Rohr ist ein anderes Experiment.`,
  otherMouth: (mouth, ownMouth) =>
    `diese Mündung ist ${mouth}, die des Experiments ${ownMouth}. Ein anderes Rohr ist ein anderes Experiment.`,
  noReading: (zeroOffsetM, columnM, { lowest, highest }) =>
    `bei einer Nullpunktverschiebung des Maßstabs von ${fullCentimetres(zeroOffsetM)}\u00a0cm würde man eine Säule von ${fullCentimetres(columnM)}\u00a0cm bei ${fullCentimetres(columnM + zeroOffsetM)}\u00a0cm ablesen; möglich sind ${fullCentimetres(lowest)}\u00a0cm bis ${fullCentimetres(highest)}\u00a0cm. Öffne die Tabelle als neues Experiment, oder ändere zuerst die Nullpunktverschiebung unter Aufbau.`,
};

export const intakeRemark: LaterWords['intakeRemark'] = {
  notRead: (headings) => `Diese Spalten werden nicht gelesen: ${headings}.`,
  skipped: (rows) => `Diese Zeilen sind ausgelassen (excluded) und nicht lesbar: ${rows}.`,
  mendFile:
    'Korrigiere diese Felder in der Datei, oder speichere sie von dieser Seite aus noch einmal; öffne sie dann wieder.',
  goodPart: 'Im fehlerfreien Teil fehlt, was hier genannt ist; weggelassene Zahlen stehen in seiner Notiz.',
  widestTaken: (widestM) =>
    `Die Längen haben verschiedene Unsicherheiten (die übliche, wo keine angegeben ist): Die größte, ${fullMillimetres(widestM)}\u00a0mm, gilt für alle.`,
  offsetPutBack: (zeroOffsetM) =>
    `Die Längen der Tabelle gelten als Längen der Säule: Die Nullpunktverschiebung des Maßstabs von ${fullMillimetres(zeroOffsetM)}\u00a0mm kommt wieder dazu.`,
};
