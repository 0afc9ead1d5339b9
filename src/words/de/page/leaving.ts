import type { LaterWords } from '../../catalogue.ts';

export const leaving: LaterWords['leaving'] = {
  heading: (title) => `„${title}“ verlassen, ohne es zu speichern?`,
  message:
    'Was du eingegeben hast, steht nur in diesem Tab. Wenn ein anderes Experiment an seine Stelle tritt, ist es weg, außer du speicherst vorher seine Datei.',
  messageWith: (why) =>
    `Was du eingegeben hast, steht nur in diesem Tab: ${why} Wenn ein anderes Experiment an seine Stelle tritt, ist es weg, außer du speicherst vorher seine Datei.`,
  no: 'Dabei bleiben',
  saveFirst: 'Datei speichern, dann weiter',
  yes: 'Ohne Speichern weiter',
};
