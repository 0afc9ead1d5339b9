import type { LaterWords } from '../../catalogue.ts';

export const readingHelp: LaterWords['readingHelp'] = {
  legend:
    'In den Diagrammen ist ein Punkt eine Marke, der Balken dazu ihre Unsicherheit. Die Linie ist die Ausgleichsgerade. Ein Kreuz ist ein Ausreißer, der für sie nicht zählt.',
  termsHeading: 'Was die Buchstaben bedeuten',
  terms: {
    k: 'der Erweiterungsfaktor. Standardunsicherheit mal k ergibt einen Bereich, der bei 95 von 100 solchen Messungen den wahren Wert enthält.',
    ν: 'die Freiheitsgrade: wie gut die Unsicherheit selbst bekannt ist. Je weniger es sind, desto größer ist k.',
    Eₙ: 'der Unterschied zweier Werte, geteilt durch ihre gemeinsame erweiterte Unsicherheit. Zwischen −1 und 1 stimmen beide überein.',
  },
  sourcesHeading: 'Quellen',
  sources: {
    speed: (references) => `Schallgeschwindigkeit in Luft: ${references}.`,
    end: (references) => `Mündungskorrektur: ${references}.`,
    wall: (references) => `Bremsung durch die Wand: ${references}.`,
    uncertainty: (references) => `Unsicherheit: ${references}.`,
  },
};
