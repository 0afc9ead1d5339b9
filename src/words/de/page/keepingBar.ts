import type { FirstWords } from '../../catalogue.ts';

export const keepingBar: FirstWords['keepingBar'] = {
  elsewhere:
    'Dieses Experiment ist in einem anderen Tab offen. Dieser Tab zeigt es nur und folgt dem anderen.',
  workHere: 'Hier weiterarbeiten',
  openCopy: 'Kopie öffnen',
  apart:
    'Dieses Experiment wurde in einem anderen Tab geändert. Was du hier änderst, wird nicht gespeichert.',
  goOn: 'Mit einer Kopie weitermachen',
  useOther: 'Stand des anderen Tabs benutzen',
  refused: (why) =>
    `Deine Arbeit ist nur in diesem Tab: ${why} Du kannst weitermachen. Speichere die Datei, bevor du gehst.`,
  save: 'Datei speichern',
  tryAgain: 'Noch einmal versuchen',
  sound: (used, limit) => ({
    before: '',
    part: '● Ton wird gespeichert',
    after: `, solange du zuhörst: ${used} von ${limit}`,
  }),
  stopSaving: 'Ton nicht mehr speichern',
  newer:
    'Eine neuere Version dieser Seite ist da. Aktualisiere, wann du willst; deine Messungen sind gespeichert.',
  newerBusy:
    'Eine neuere Version dieser Seite ist da. Schließ zuerst ihre anderen Tabs: Sie benutzen noch die alte.',
  useNewer: 'Jetzt aktualisieren',
};
