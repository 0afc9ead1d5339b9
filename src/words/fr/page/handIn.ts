import type { LaterWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const handIn: LaterWords['handIn'] = {
  heading: 'Rendre le travail',
  lead: 'Un code contient les repères pris en compte, le montage et le nom du groupe. Votre professeur le lit sur cet écran avec un téléphone, une tablette ou la vue Classe. Rien n’est envoyé.',
  none: 'Aucun repère n’a encore de longueur.',
  unnamed: 'Votre groupe n’a pas encore de nom. Donnez-lui-en un sous « Cette expérience ».',
  show: 'Montrer le code',
  hide: 'Cacher le code',
  codeName: 'le résultat de ce groupe',
  holds: (group, marks) =>
    `${group}\u00a0: ${counted(marks, 'repère', 'repères')}. Le code ne contient ni notes, ni son, ni aucun nom sauf celui du groupe.`,
  link: 'La même chose sous forme de lien',
};
