import type { LaterWords } from '../../catalogue.ts';

export const microphone: LaterWords['microphone'] = {
  name: 'Mikrofonhilfe',
  heading: 'Hilfe zum Mikrofon',
  lead: 'Ein Mikrofon brauchst du nur zum Zuhören. Ohne Mikrofon kannst du Längen eintippen, Aufnahmen öffnen und die Übungssäule benutzen.',
  bench: 'Beim Messen',
  benchHeads: { seen: 'Was du siehst', why: 'Warum', toDo: 'Was tun' },
  administratorHeading: 'Für die Administration der Schule',
  administratorLead:
    'Diese Seite braucht das Mikrofon ohne jede Sprachverarbeitung. Sie speichert Experimente im Browser und sendet nichts.',
  administrator: 'Administration',
  administratorHeads: { seen: 'Wo', why: 'Worauf es ankommt', toDo: 'Einstellung' },
  print: 'Diese Seite drucken',
  back: 'Zurück zu den Prüfungen',
};

export const benchHelp: LaterWords['benchHelp'] = {
  asking: {
    seen: 'Nach „Zuhören“ passiert nichts',
    why: 'Der Browser wartet noch auf deine Erlaubnis, oft in einem kleinen Fenster bei der Adresse.',
    toDo: 'Wähle „Zulassen“. Hast du das Fenster geschlossen, drück noch einmal „Zuhören“.',
  },
  refused: {
    seen: 'Das Mikrofon wurde verweigert',
    why: 'Jemand hat für diese Seite einmal „Blockieren“ gewählt, und der Browser merkt sich das.',
    toDo: 'Drück das Symbol neben der Adresse, stell das Mikrofon auf „Zulassen“ und drück noch einmal „Zuhören“.',
  },
  insecure: {
    seen: 'Die Seite verlangt eine sichere Adresse',
    why: 'Über einfaches http und bei einer Datei von der Festplatte geben Browser kein Mikrofon frei.',
    toDo: 'Öffne die Seite über ihre https-Adresse oder auf diesem Rechner unter localhost.',
  },
  framed: {
    seen: 'Die Seite steckt in einer anderen Seite',
    why: 'Eine Lernplattform zeigt sie in einem Rahmen, der das Mikrofon nicht weitergibt.',
    toDo: 'Öffne sie in einem eigenen Tab.',
  },
  missing: {
    seen: 'Es wurde kein Mikrofon gefunden, oder es ist belegt',
    why: 'Es ist nicht angeschlossen oder ausgeschaltet, oder ein anderes Programm (etwa ein Anruf) benutzt es.',
    toDo: 'Schließ es an, such seinen Schalter, beende den Anruf und drück noch einmal „Zuhören“.',
  },
  doubtful: {
    seen: 'Der Pegel ist fraglich: Etwas verändert ihn vielleicht',
    why: 'Ein Sprachmodus von Browser, System oder Headset verstellt die Lautstärke von selbst.',
    toDo: 'Nimm das Headset ab, wähle das eingebaute Mikrofon, schalte den Sprachmodus aus oder versuch einen anderen Browser.',
  },
  hopeless: {
    seen: 'Nichts hilft',
    why: 'Manche Systeme geben Webseiten nur bearbeiteten Ton.',
    toDo: 'Nimm einen Durchgang mit einem Aufnahmeprogramm ohne Sprachmodus auf und öffne die Datei hier. Sie wird genauso ausgewertet.',
  },
};

export const administratorHelp: LaterWords['administratorHelp'] = {
  site: {
    seen: 'Server, falls Sie die Dateien selbst anbieten',
    why: 'Er muss https benutzen, und ein Permissions-Policy-Header darf das Mikrofon nicht sperren.',
    toDo: 'Permissions-Policy: microphone=(self)',
  },
  platform: {
    seen: 'Lernplattform',
    why: 'Ein Rahmen gibt das Mikrofon nur weiter, wenn er es ausdrücklich erlaubt.',
    toDo: '<iframe allow="microphone" …> oder ein Link, der einen eigenen Tab öffnet',
  },
  policies: {
    seen: 'Verwaltetes Chrome, Edge, ChromeOS',
    why: 'Richtlinien erlauben oder verbieten das Mikrofon; einzelne Seiten lassen sich freigeben.',
    toDo: 'AudioCaptureAllowedUrls: die Adresse dieser Seite. Sie gilt auch, wenn AudioCaptureAllowed aus ist',
  },
  windows: {
    seen: 'Windows',
    why: 'Der Datenschutzschalter für Desktopprogramme; „Verbesserungen“ des Treibers verstellen die Lautstärke von selbst.',
    toDo: 'Einstellungen, Datenschutz, Mikrofon: für den Browser an. Einstellungen, Sound, Eigenschaften des Mikrofons: Verbesserungen aus',
  },
  mac: {
    seen: 'macOS',
    why: 'Jedes Programm fragt einmal; die Stimmisolation ist ein Modus des Mikrofons.',
    toDo: 'Systemeinstellungen, Datenschutz & Sicherheit, Mikrofon: für den Browser an. Mikrofonmodus in der Menüleiste: Standard',
  },
  chromebook: {
    seen: 'ChromeOS',
    why: 'Ein Schalter für das ganze Gerät und einer für die Geräuschunterdrückung neben der Eingangslautstärke.',
    toDo: 'Mikrofonzugriff an; Geräuschunterdrückung und Stilübertragung aus',
  },
  tablet: {
    seen: 'iPad und iPhone',
    why: 'Der Browser hat einen eigenen Schalter, jedes Programm einen eigenen Mikrofonmodus.',
    toDo: 'Einstellungen des Browsers: Mikrofon erlauben. Kontrollzentrum während des Zuhörens: Mikrofonmodus Standard',
  },
  linux: {
    seen: 'Linux',
    why: 'Auf dem Soundserver kann eine Echounterdrückung laufen.',
    toDo: 'In den Klangeinstellungen den einfachen Eingang wählen',
  },
  network: {
    seen: 'Netz',
    why: 'Die Seite sendet nichts: Der Ton wird auf dem Gerät ausgewertet und verlässt es nie.',
    toDo: 'Kein Port, kein Server und keine Ausnahme nötig, außer zum Laden der Seite',
  },
};
