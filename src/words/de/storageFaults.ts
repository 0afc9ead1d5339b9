import type { FirstWords } from '../catalogue.ts';

export const storageFault: FirstWords['storageFault'] = {
  elsewhere: 'Inzwischen hat ein anderer Tab dieses Experiment gespeichert.',
  full: 'Der Speicher, den dieser Browser der Seite gibt, ist voll. Lösche gespeicherten Ton (unter Ablage) oder schaff Platz, und versuch es dann noch einmal.',
  closed: 'Der Browser hat den Speicher dieser Seite geschlossen. Versuch es noch einmal.',
  gone: {
    'another tab': 'Ein anderer Tab hat geschlossen oder gelöscht, was diese Seite gespeichert hatte.',
    'the browser': 'Der Browser hat geschlossen oder gelöscht, was diese Seite gespeichert hatte.',
    'this tab': 'Dieser Tab hat geschlossen oder gelöscht, was diese Seite gespeichert hatte.',
  },
  refused:
    'Dieser Browser lässt die Seite nichts speichern: Ein privates Fenster oder eine Einstellung verbietet es.',
  newer:
    'Hier hat eine neuere Version dieser Seite gespeichert. Schließ alle ihre Tabs und öffne sie wieder.',
  page: 'Beim Speichern ist die Seite selbst gescheitert.',
  unknown: (said) => `Der Speicher des Browsers hat versagt (${said}).`,
};
