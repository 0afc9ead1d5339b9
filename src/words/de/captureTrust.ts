import type { FirstWords } from '../catalogue.ts';

export const stepLabels: FirstWords['stepLabels'] = {
  autoGainControl: 'Automatische Verstärkung',
  noiseSuppression: 'Rauschunterdrückung',
  echoCancellation: 'Echounterdrückung',
};

export const stepNames: FirstWords['stepNames'] = {
  autoGainControl: 'automatische Verstärkung',
  noiseSuppression: 'Rauschunterdrückung',
  echoCancellation: 'Echounterdrückung',
};

export const captureTrust: FirstWords['captureTrust'] = {
  nothingProcesses: 'Nichts verändert den Ton dieser Quelle.',
  processingOn: {
    marks: (steps) =>
      `Dieser Browser lässt ${steps} eingeschaltet, was den Pegel verändern kann. Resonanzen bekommen trotzdem Marken, jede mit diesem Zweifel: Ihre Längen stimmen, ihr Anstieg in dB kann falsch sein. Wähle ein anderes Mikrofon oder einen anderen Browser, schalte Sprachmodi in den Toneinstellungen des Systems aus, oder nimm mit irgendeinem Programm auf und öffne die Datei hier.`,
    sweep: (steps) =>
      `Dieser Browser lässt ${steps} eingeschaltet, was den Pegel verändern kann. Die Maxima unten können verschoben sein oder fehlen. Wähle ein anderes Mikrofon oder einen anderen Browser, oder schalte Sprachmodi in den Toneinstellungen des Systems aus.`,
  },
  checkFailed: {
    marks:
      'Der Verstärkungstest hat ergeben, dass etwas den Pegel verändert. Resonanzen bekommen trotzdem Marken, jede mit diesem Zweifel: Ihre Längen stimmen, ihr Anstieg in dB kann falsch sein. Schalte Sprachmodi in den Toneinstellungen des Systems aus oder wähle ein anderes Mikrofon; mach dann den Test noch einmal.',
    sweep:
      'Der Verstärkungstest hat ergeben, dass etwas den Pegel verändert. Die Maxima unten können verschoben sein oder fehlen. Schalte Sprachmodi in den Toneinstellungen des Systems aus oder wähle ein anderes Mikrofon; mach dann den Test noch einmal.',
  },
  checkPassed: 'Der Verstärkungstest mit diesem Mikrofon ist bestanden.',
  soundsProcessed: {
    marks:
      'Der Ton sieht bearbeitet aus, obwohl der Browser sagt, er sei es nicht. Resonanzen bekommen trotzdem Marken, jede mit diesem Zweifel: Ihre Längen stimmen, ihr Anstieg in dB kann falsch sein. Mach den Verstärkungstest: Ist er bestanden, sind neue Marken ohne Zweifel.',
    sweep:
      'Der Ton sieht bearbeitet aus, obwohl der Browser sagt, er sei es nicht. Die Maxima unten können verschoben sein oder fehlen. Mach den Verstärkungstest: Ist er bestanden, wiederhole den Sweep.',
  },
  processingOff: 'Der Browser bearbeitet den Ton nicht.',
  processingUnsaid: (steps) =>
    `Dieser Browser sagt nicht, ob er ${steps} ausgeschaltet hat. Mach den Verstärkungstest, bevor du einem Pegel traust.`,
};

export const markDoubt: FirstWords['markDoubt'] = {
  inDoubt: (reasons) => `Zweifelhaft: ${reasons}`,
  reasons: {
    'processing-on': 'der Browser hat den Ton bearbeitet, der Anstieg in dB kann also falsch sein',
    'gain-check-failed': 'der Verstärkungstest war nicht bestanden, der Anstieg in dB kann also falsch sein',
    'sounds-processed': 'der Ton sah bearbeitet aus, der Anstieg in dB kann also falsch sein',
    suppressed: 'der Ton brach darin ab, vielleicht ist es also keine Resonanz',
  },
};
