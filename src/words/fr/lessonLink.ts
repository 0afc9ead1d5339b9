import type { LaterWords } from '../catalogue.ts';

export const lessonFault: LaterWords['lessonFault'] = {
  taskTooLong: (length, longest) =>
    `La consigne a ${length} caractères ; un lien de séance en contient ${longest} au plus. Raccourcissez-la.`,
  linkTooLong: (forks, longest) =>
    `Avec ${forks} diapasons, le lien dépasserait les ${longest} caractères permis. Retirez des diapasons ou raccourcissez la consigne.`,
};
