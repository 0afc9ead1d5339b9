import type { LaterWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const handIn: LaterWords['handIn'] = {
  heading: 'Abgeben',
  lead: 'Zeigt einen Code mit den Marken, die zählen, dem Aufbau und dem Namen der Gruppe. Deine Lehrkraft liest ihn von diesem Bildschirm mit einem Handy, einem Tablet oder der Ansicht „Klasse“. Nichts wird gesendet.',
  none: 'Noch keine Marke hat eine Länge.',
  unnamed: 'Deine Gruppe hat noch keinen Namen. Gib ihn unter „Dieses Experiment“ ein.',
  show: 'Code zeigen',
  hide: 'Code verbergen',
  codeName: 'das Ergebnis dieser Gruppe',
  holds: (group, marks) =>
    `${group}: ${counted(marks, 'Marke', 'Marken')}. Der Code enthält keine Notizen, keinen Ton und keinen Namen außer dem der Gruppe.`,
  link: 'Dasselbe als Link',
};
