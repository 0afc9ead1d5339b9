import type { FirstWords } from '../../catalogue.ts';

export const groupName: FirstWords['groupName'] = {
  ask: 'Name deiner Gruppe',
  take: 'Übernehmen',
  later: 'Später',
  taken: (group) =>
    `In Dateien, Protokoll und Klasse heißt deine Gruppe jetzt „${group}“. Unter Ablage kannst du den Namen ändern.`,
};
