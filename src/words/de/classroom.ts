import type { LaterWords } from '../catalogue.ts';
import { counted, plural } from './grammar.ts';

export const classResult: LaterWords['classResult'] = {
  none: 'Noch keine Gruppe hat ein Ergebnis.',
  counted: (groups, all) =>
    `${groups} von ${counted(all, 'Gruppe', 'Gruppen')} ${plural(groups, 'zählt', 'zählen')} mit.`,
  others: 'Die anderen stehen mit dem Grund in der Tabelle.',
  interval:
    'Bei 95 von 100 solchen Klassen liegt die wahre Geschwindigkeit in dem Bereich, den ± angibt, wenn die Gruppen keinen Fehler gemeinsam haben.',
  spread: (mps) =>
    `Die Ergebnisse der Gruppen unterscheiden sich mehr, als ihre eigenen Unsicherheiten erklären: um weitere ${mps}\u00a0m/s (Standardabweichung). Eine Gruppe allein kann solche Fehler nicht bemerken.`,
  noSpread: 'Die Gruppen unterscheiden sich nicht mehr, als ihre eigenen Unsicherheiten erklären.',
  noAir: 'Keine Gruppe hat eine Temperatur notiert: Die Geschwindigkeiten zählen, wie sie sind.',
  referred: (celsius) =>
    `Alle Geschwindigkeiten sind mit der Formel für die Schallgeschwindigkeit in Luft auf ${celsius}\u00a0°C umgerechnet.`,
  withoutAir: (groups) =>
    plural(
      groups,
      `${groups} Gruppe hat keine Temperatur notiert: Ihre Geschwindigkeit zählt, wie sie ist.`,
      `${groups} Gruppen haben keine Temperatur notiert: Ihre Geschwindigkeiten zählen, wie sie sind.`,
    ),
  theory: (mps, difference) =>
    `Die berechnete Geschwindigkeit für diese Luft ist ${mps}\u00a0m/s. Abweichung der Klasse davon: ${difference}\u00a0m/s.`,
  shared:
    'Fehler, die alle Gruppen gemeinsam haben, etwa durch Maßstäbe gleicher Bauart, mitteln sich nicht heraus und sind in dieser Unsicherheit nicht enthalten.',
  method:
    'Verfahren: Mittelwert mit zufälligen Effekten (Paule & Mandel 1982); Intervall nach Hartung & Knapp 2001.',
};

export const classGroup: LaterWords['classGroup'] = {
  row: (number) => `Zeile ${number}`,
  mark: (number) => `Marke ${number}`,
  markCause: (mark, cause) => `${mark}: ${cause}`,
  noResult: 'Kein Ergebnis.',
  outlier: (difference) =>
    `Ausreißer, zählt nicht mit: ${difference}\u00a0m/s neben dem Ergebnis der Klasse.`,
  noReason: 'Es kamen keine Marken mit, die den Grund zeigen könnten.',
  held: 'Zählt erst nach deiner Prüfung mit. Setz den Haken, und es zählt, wie es ist.',
  longColumn: (metres) =>
    `Eine Säule von ${metres}\u00a0m ist länger als die Rohre einer Schule. Wurden Millimeter statt Zentimeter eingetippt?`,
  resultAlone: 'Ein Ergebnis ohne Marken.',
  noAir: 'Keine Temperatur notiert: Die Geschwindigkeit zählt, wie sie ist.',
  unnamed: (table, row) => `${table}, Zeile ${row}`,
};

export const sameGroup: LaterWords['sameGroup'] = {
  'same marks': (group) => `Dieselben Marken wie „${group}“.`,
  'earlier state of the same experiment': (group) => `Eine frühere Fassung von „${group}“.`,
  'same group again': (group) => `Dieselbe Gruppe wie „${group}“.`,
};

export const classDiscussion: LaterWords['classDiscussion'] = {
  spread:
    'Die Ergebnisse der Gruppen unterscheiden sich mehr, als ihre Unsicherheiten erlauben. Woran hat niemand gedacht?',
  agree:
    'Die Gruppen stimmen innerhalb ihrer Unsicherheiten überein. Was könnten alle gemeinsam falsch gemacht haben?',
  apart: (groups) =>
    `Diese Ergebnisse fallen heraus: ${groups}. Daraus können alle lernen: Was am Aufbau würde genau diesen Unterschied bewirken?`,
  others: (count) => `${count} weitere`,
  temperatures: (coldest, warmest) =>
    `Die Lufttemperatur lag zwischen ${coldest} und ${warmest}\u00a0°C. Wie viele m/s je Grad lest ihr aus dem Bild von Geschwindigkeit und Temperatur ab, und sind die Unsicherheiten der Gruppen klein genug, um das zu sehen?`,
  moreGroups:
    'Wie würden sich der Mittelwert und seine Unsicherheit ändern, wenn doppelt so viele Gruppen gemessen hätten?',
};

export const spreadPicture: LaterWords['spreadPicture'] = {
  title: 'Streuung in der Klasse',
  heading: 'Schallgeschwindigkeit, Gruppe für Gruppe',
  axis: 'Schallgeschwindigkeit, m/s (Balken: 95\u00a0%)',
  shows: (groups, mps, uncertainty) =>
    `${counted(groups, 'Gruppe', 'Gruppen')}, von der langsamsten zur schnellsten, mit 95-%-Intervallen. Das Band ist das Ergebnis der Klasse, ${mps} ± ${uncertainty}\u00a0m/s. Hohle Punkte zählen nicht mit.`,
  outliers: (count) => plural(count, 'Das Kreuz ist ein Ausreißer.', `Die ${count} Kreuze sind Ausreißer.`),
  beyond: 'Was außerhalb des Bildes läge, ist am Rand gezeichnet.',
};
