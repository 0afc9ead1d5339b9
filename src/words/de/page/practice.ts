import type { FirstWords } from '../../catalogue.ts';

export const practice: FirstWords['practice'] = {
  heading: 'Übungssäule',
  strike: 'Gabel anschlagen',
  forkAtMouth: 'Gabel an der Mündung',
  damp: 'Dämpfen',
  shorter: 'Einen Millimeter kürzer',
  longer: 'Einen Millimeter länger',
  shorterFine: 'Ein Fünftel Millimeter kürzer',
  longerFine: 'Ein Fünftel Millimeter länger',
  rule: 'Lupe: der Maßstab am Kolben',
  room: 'Raum',
  rooms: { quiet: 'ruhig', talk: 'einige reden', 'full class': 'volle Klasse' },
  instruments: (celsius, humidityPercent, diameterMm) =>
    `Messgeräte: ${celsius}\u00a0°C, ${humidityPercent}\u00a0% Luftfeuchte, Rohr innen ${diameterMm}\u00a0mm weit`,
  instrumentsApart: (celsius, humidityPercent, diameterMm, place) =>
    `Messgeräte: ${celsius}\u00a0°C, ${humidityPercent}\u00a0% Luftfeuchte, Rohr innen ${diameterMm}\u00a0mm weit. Der jetzige Ort ist ein anderer Raum, daher werden sie an einem eigenen Ort notiert: „${place}“`,
  note: 'Diese Werte notieren',
  noted: 'Die Werte sind unter Aufbau notiert.',
  notedApart: (place) =>
    `Die Werte sind unter Aufbau notiert, an einem eigenen Ort: „${place}“. Was du jetzt misst, gehört zu diesem Ort.`,
  otherTube: (diameterMm, practiceDiameterMm) =>
    `Das Rohr der Übung ist ${practiceDiameterMm}\u00a0mm weit, das dieses Experiments aber ${diameterMm}\u00a0mm. Beginn zum Üben ein neues Experiment unter Ablage.`,
};

export const guide: FirstWords['guide'] = {
  heading: 'Anleitung',
  count: (done, all) => `Anleitung, ${done} von ${all}:`,
  says: {
    listen: 'Drück „Zuhören“ und warte einen Moment.',
    strike: 'Schlag die Gabel an und halte sie an die Mündung.',
    slide: 'Zieh den Griff langsam ans andere Ende: Jedes Aufblitzen ist eine Marke.',
    slideAgain: 'Zu wenige gefunden: Schlag wieder an und schieb langsamer vorbei.',
    back: 'Geh zurück, wie das Bild es zeigt, bis dort „Hier“ steht.',
    type: 'Lies die Länge in der Lupe ab und tipp sie über dem Rohr ein.',
    rest: 'Geh ebenso zur nächsten Marke zurück; lies ihre Länge ab und tipp sie ein.',
    read: 'Drück „Diese Werte notieren“ neben den Knöpfen der Gabel.',
    faintSliding: 'Die Gabel ist leise: Schlag sie wieder an und schieb weiter.',
    faint: 'Die Gabel ist leise: Schlag sie wieder an. Der Weg zurück bleibt.',
  },
  done: 'Fertig: Oben steht die Geschwindigkeit. Mehr Marken machen sie sicherer.',
  showTruth: 'Wahre Werte zeigen',
  hideTruth: 'Wahre Werte verbergen',
};
