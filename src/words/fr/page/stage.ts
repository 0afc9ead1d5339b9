import type { FirstWords } from '../../catalogue.ts';
import { plural } from '../grammar.ts';

export const source: FirstWords['source'] = {
  legend: 'Source du son',
  names: { practice: 'Entraînement', microphone: 'Micro', recording: 'Enregistrement' },
  listen: 'Écouter',
  stop: 'Arrêter',
  open: 'Ouvrir un enregistrement',
  file: 'Enregistrement à ouvrir',
  progress: 'Écoute de l’enregistrement',
  rate: (kilohertz, processing) => `${kilohertz}\u00a0kHz, ${processing}`,
  processing: {
    on: 'modifié par le navigateur',
    unknown: 'peut-être modifié par le navigateur',
    off: 'non modifié par le navigateur',
  },
};

export const now: FirstWords['now'] = {
  legend: 'Mesure en cours',
  fork: 'Diapason',
  hertz: (frequency) => `${frequency}\u00a0Hz`,
  addFork: 'Ajouter un diapason…',
  alsoChange: (marks) =>
    plural(marks, 'Modifier aussi le repère déjà fait', `Modifier aussi les ${marks} repères déjà faits`),
  column: 'Colonne',
  place: 'Lieu',
};

export const drawn: FirstWords['drawn'] = {
  wave: 'Onde',
  waveNamed: 'Onde dessinée',
  waves: { pressure: 'pression', displacement: 'déplacement', none: 'aucune' },
  expected: 'Longueurs attendues',
};

export const readout: FirstWords['readout'] = {
  none: '–',
  unit: 'dB au-dessus du bruit',
  noneSpoken: 'Hausse par rapport au bruit de la salle : aucun son entendu',
  levelSpoken: (riseDb) => `Hausse par rapport au bruit de la salle\u00a0: ${riseDb} décibels`,
  check: (sign, verdict) => `Cette longueur\u00a0: ${sign} ${verdict}`,
};

export const wayBack: FirstWords['wayBack'] = {
  idle: 'Retour à la résonance',
  here: 'Ici.',
  holdStill: 'Ne bougez plus et lisez la règle.',
  atMaximum: 'À la position la plus sonore.',
  toGo: 'mm restants',
  hereLarge: 'Ici',
  nothingToGo: 'lisez la règle',
  moves: {
    piston: { tooLong: 'enfoncez', tooShort: 'tirez' },
    dipped: { tooLong: 'baissez le tube', tooShort: 'levez le tube' },
    filled: { tooLong: 'montez le niveau d’eau', tooShort: 'baissez le niveau d’eau' },
  },
  off: (side, move) => `${side}\u00a0: ${move}`,
  heardAgo: (seconds) => `(il y a ${seconds}\u00a0s)`,
  lost: 'Impossible de savoir où elle est. Passez-y encore une fois, puis revenez-y des deux côtés.',
  byLevel: 'Retour à la position la plus sonore : dépassez-la des deux côtés.',
  tooShort: 'trop courte',
  tooLong: 'trop longue',
  spoken: {
    here: 'Ici. Ne bougez plus.',
    atMaximum: 'À la position la plus sonore.',
    tooLong: (move) => `Trop longue\u00a0: ${move}.`,
    tooLongBy: (mm, move) => `Trop longue de ${mm}\u00a0mm\u00a0: ${move}.`,
    tooShort: (move) => `Trop courte\u00a0: ${move}.`,
    tooShortBy: (mm, move) => `Trop courte de ${mm}\u00a0mm\u00a0: ${move}.`,
    lost: 'Impossible de savoir où elle est. Passez-y encore une fois.',
    close: 'Près de la position la plus sonore.',
    away: 'Loin de la position la plus sonore.',
  },
};

export const task: FirstWords['task'] = { task: 'Consigne :' };
