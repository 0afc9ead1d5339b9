import type { LaterWords } from '../../catalogue.ts';

export const compare: LaterWords['compare'] = {
  region: 'Vergleichen',
  heading: 'Ist der Unterschied echt?',
  lead: 'Fehler, die beide Ergebnisse gemeinsam haben (derselbe Maßstab, dieselbe Gabel), heben sich auf. Nur die anderen zählen.',
  by: 'Verglichen werden',
  ways: {
    place: 'Orte (und ihre Temperaturen)',
    fork: 'Gabeln',
    ends: 'geschlossene und offene Säulen',
  },
  theoryHidden: 'Diese Unterrichtsstunde verbirgt die berechnete Geschwindigkeit.',
  noMark: 'Noch keine Marke hat eine Länge. Setz zuerst unter Messen eine Marke bei einer Resonanz.',
  onlyOne: {
    place: (name) =>
      `Zum Vergleichen gibt es bis jetzt nur „${name}“. Füge unter Aufbau einen Ort hinzu, wähle ihn über der Säule und setz dort eine Marke bei einer Resonanz.`,
    fork: (name) =>
      `Zum Vergleichen gibt es bis jetzt nur „${name}“. Füge unter Aufbau eine Gabel hinzu, wähle sie über der Säule und setz mit ihr eine Marke bei einer Resonanz.`,
    ends: (name) =>
      `Zum Vergleichen gibt es bis jetzt nur „${name}“. Wähle über dem Bild die andere Art von Säule und setz darin eine Marke bei einer Resonanz.`,
  },
  manyPairs: (groups) =>
    `Aus ${groups} davon werden ${(groups * (groups - 1)) / 2} Paare. Wähle aus, was mit jedem der anderen verglichen wird.`,
  against: 'Mit den anderen vergleichen',
};

export const temperatures: LaterWords['temperatures'] = {
  heading: 'Geschwindigkeit über der Temperatur',
  lead: 'Ein Punkt für jeden Ort. Das Band zeigt die berechnete Geschwindigkeit, von trockener bis zu gesättigter Luft.',
  columns: { place: 'Ort', speed: 'Geschwindigkeit', theory: 'Unterschied zur Berechnung' },
  noSpeed: '—',
  noTemperature: 'Temperatur nicht notiert',
};

export const ends: LaterWords['ends'] = {
  heading: 'Mündungskorrektur über dem Durchmesser',
  lead: 'Ein Punkt für jedes Rohr. Miss jedes Rohr in einem eigenen Experiment; für die Mündungskorrektur sind Resonanzen zweier Ordnungen nötig.',
};

export const turned: LaterWords['turned'] = {
  heading: 'Umgekehrt gefragt',
  lead: 'Dieselben Marken, aber eine andere Größe ist unbekannt.',
  fork: 'Geschwindigkeit bekannt, Gabel unbekannt',
  temperature: 'Gabel bekannt, Temperatur unbekannt',
  gas: 'Gabel und Temperatur bekannt, Gas unbekannt',
  ends: 'Mündungskorrektur im Verhältnis zum Durchmesser',
  pending: '…',
};
