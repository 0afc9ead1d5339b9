import type { LaterWords } from '../../catalogue.ts';

export const lesson: LaterWords['lesson'] = {
  heading: 'Stundenlink',
  lead: 'Für Lehrkräfte: ein Link für die Klasse mit Gabeln, Rohr, Maßstab, Orten und Säule, wie sie jetzt eingestellt sind. Er enthält keine Marken und keine Namen.',
  task: 'Was zu messen ist',
  language: 'Sprache der Aufgabe (en, de, fr …)',
  hideExpected: 'Verbergen, wo Resonanzen erwartet werden',
  hideTheory: 'Die berechnete Geschwindigkeit verbergen',
  hideTruth: 'Die wahren Werte der Übungssäule verbergen',
  apart:
    'Die letzten beiden gelten unabhängig voneinander. Ist nur die Berechnung verborgen, verrät „Wahre Werte zeigen“ die Schallgeschwindigkeit allen, die üben. Wähle beide, um sie überall zu verbergen.',
  limits:
    'Was sich nicht verbergen lässt: was die Klasse selbst ausrechnet oder nachschlägt, diese Seite ohne den Link, und der Quelltext des Programms. Verbergen hält die Lösung außer Sicht; ein Schloss ist es nicht.',
  make: 'Link erstellen',
  link: 'Link',
  copy: 'Link kopieren',
  code: 'Als QR-Code zeigen',
  codeName: 'die Unterrichtsstunde',
  tooLongForCode: 'Der Link ist zu lang für einen QR-Code. Kürze die Aufgabe, oder verschicke den Link.',
  reveal: 'Wenn es so weit ist: der Klasse zeigen, was verborgen war',
  revealCode: 'Code zum Ansagen; einzugeben in der Ablage',
  revealLink: 'Link, der dasselbe tut',
  copyReveal: 'Diesen Link kopieren',
  showRevealCode: 'Diesen Link als QR-Code zeigen',
  revealName: 'was die Unterrichtsstunde verbirgt',
  copied: 'Der Link wurde kopiert.',
  notCopied: 'Der Browser lässt das Kopieren nicht zu. Markiere den Link und kopiere ihn von Hand.',
};

export const keptBack: LaterWords['keptBack'] = {
  heading: 'Was diese Unterrichtsstunde verbirgt',
  until: (list) => `Verborgen, bis deine Lehrkraft es zeigt: ${list}.`,
  expected: 'wo Resonanzen erwartet werden',
  theory: 'die berechnete Schallgeschwindigkeit',
  truth: 'die wahren Werte der Übungssäule',
  code: 'Code der Lehrkraft',
  show: 'Zeigen',
  noCode: 'Diese Unterrichtsstunde hat keinen Code, der es zeigen würde.',
};
