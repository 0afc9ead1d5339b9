import type { LaterWords } from '../../catalogue.ts';
import { dayAndTime } from '../../dates.ts';
import { counted, plural } from '../grammar.ts';

export const report: LaterWords['report'] = {
  title: 'Vitesse du son dans une colonne d’air',
  fileTitle: 'Compte rendu colonne d’air',
  dates: (createdAt, changedAt) =>
    `Commencé le ${dayAndTime(createdAt)}, modifié le ${dayAndTime(changedAt)} (UTC)`,
  names: 'Noms',
  classAndDate: 'Classe et date',
  date: 'Date',
  group: (group) => `Groupe : ${group}`,
  className: (name) => `Classe : ${name}`,
  questions: 'Questions',
  task: 'Consigne',
  note: 'Note',
  notWorked: (places) =>
    `Les graphiques, calculs et bilans de ${counted(places, 'autre lieu', 'autres lieux')} ne sont pas imprimés. « Calculs » sur la page montre ceux du lieu choisi.`,
  cautions: 'Précautions',
  cautionList: [
    'Frappez le diapason sur du caoutchouc ou une semelle, jamais sur du verre ou une arête dure.',
    'Tenez un diapason qui vibre loin des dents et du verre.',
    'Un tube de verre casse facilement\u00a0: serrez-le en douceur. Tenez l’eau loin des appareils électriques.',
    'Les sons joués commencent doucement. Les règles de sécurité de votre laboratoire passent avant tout.',
  ],
  discussion: 'Discussion',
};

export const resultPart: LaterWords['resultPart'] = {
  heading: 'Résultat : vitesse du son à l’air libre',
  own: 'c = ( ________ ± ________ ) m/s',
  speed: (speed) =>
    speed === null
      ? 'Aucune vitesse ne peut encore être donnée.'
      : `c = (${speed.value} ± ${speed.uncertainty})\u00a0m/s`,
  none: 'Il n’y a pas encore de repère avec une longueur.',
  notPrinted: (places) =>
    `${counted(places, 'autre lieu se trouve', 'autres lieux se trouvent')} dans le tableau « Résultat » des Dossiers.`,
};

export const placePart: LaterWords['placePart'] = {
  plots: (place) => (place === null ? 'Graphiques' : `Graphiques, ${place}`),
  working: (place) => (place === null ? 'Calculs' : `Calculs, ${place}`),
  budget: (place) => (place === null ? 'Bilan d’incertitude' : `Bilan d’incertitude, ${place}`),
  budgetTable: 'Lignes du bilan',
};

export const warningsPart: LaterWords['warningsPart'] = {
  heading: 'Avertissements',
  none: 'Aucun.',
  ofPlace: (place, warning) => `${place} : ${warning}`,
  notPrinted: (warnings) =>
    `${counted(warnings, 'autre avertissement n’est pas imprimé', 'autres avertissements ne sont pas imprimés')}.`,
};

export const apparatusPart: LaterWords['apparatusPart'] = {
  heading: 'Montage',
  fork: 'Diapason',
  forksLeft: 'Autres diapasons',
  tube: 'Tube',
  rule: 'Règle',
  air: (place) => `Air, ${place}`,
  placesLeft: 'Autres lieux',
  left: (count) => `${count}, non imprimés ; le tableau « Repères » des Dossiers les contient`,
};

export const apparatusFacts: LaterWords['apparatusFacts'] = {
  stamped: (hz, uncertaintyHz) =>
    `fréquence gravée ${hz}\u00a0Hz ± ${uncertaintyHz}\u00a0Hz (incertitude-type)`,
  measured: (stampedHz, measuredHz, uncertaintyHz) =>
    `fréquence gravée ${stampedHz}\u00a0Hz, mesurée ${measuredHz} ± ${uncertaintyHz}\u00a0Hz (incertitude-type) ; la fréquence mesurée est utilisée`,
  noDiameter: 'diamètre intérieur non mesuré',
  diameter: (mm) => `diamètre intérieur ${mm}\u00a0mm`,
  otherDiameter: (mm) => `${mm}\u00a0mm à l’autre extrémité ouverte`,
  reading: (mm) => `une lecture ± ${mm}\u00a0mm (incertitude-type, recherche de la résonance comprise)`,
  readingNotStated: (taken) => `incertitude de lecture non indiquée : ${taken}`,
  zeroOffset: (mm) => `décalage du zéro ${mm}\u00a0mm`,
  temperature: (celsius, uncertainty) => `${celsius} ± ${uncertainty}\u00a0°C (incertitude-type)`,
  noTemperature: 'température non lue',
  humidity: (percent) => `humidité ${percent}\u00a0%`,
  noHumidity: 'humidité non lue',
  pressure: (hPa) => `${hPa}\u00a0hPa`,
  noPressure: 'pression non lue',
  co2: (ppm) => `${ppm}\u00a0ppm de dioxyde de carbone`,
};

export const methodPart: LaterWords['methodPart'] = {
  heading: 'Méthode',
  opening:
    'On tient un diapason qui vibre à l’embouchure d’une colonne d’air et on change la longueur de la colonne jusqu’à la résonance : le son s’amplifie à la fréquence du diapason.',
  heard: (heard, marks, where) =>
    `${heard} repère${plural(heard, '', 's')} sur ${marks} ${plural(heard, 'a été trouvé', 'ont été trouvés')} en écoutant la seule fréquence du diapason, ${where}, par comparaison avec le bruit de la salle dans la même bande étroite ; puis la longueur a été lue sur la règle.`,
  sources: {
    microphone: 'avec le micro',
    recording: 'dans un enregistrement',
    practice: 'sur la colonne d’entraînement simulée',
  },
  byHand: (byHand, marks) =>
    `${byHand} repère${plural(byHand, '', 's')} sur ${marks} ${plural(byHand, 'a été ajouté', 'ont été ajoutés')} à la main.`,
  bracketed: (marks) =>
    `Quand un repère a deux longueurs (${marks}), la résonance est entre les deux et le milieu compte.`,
  theory:
    'Une colonne fermée à une extrémité résonne quand sa longueur est un nombre impair de quarts de longueur d’onde, une colonne ouverte aux deux extrémités quand c’est un nombre entier de demi-longueurs d’onde, moins la correction d’extrémité à chaque extrémité ouverte. La vitesse est la longueur d’onde multipliée par la fréquence. Un seul ajustement pondéré utilise tous les repères, chacun avec son incertitude. Si le diamètre du tube est connu, le ralentissement de l’onde par la paroi est corrigé.',
};

export const marksPart: LaterWords['marksPart'] = {
  heading: 'Repères',
  none: 'Aucun pour l’instant.',
  table: 'Tableau des repères',
  mark: 'Repère',
  column: 'Diapason et colonne',
  length: 'Longueur, cm',
  order: 'Ordre',
  residual: 'Écart à l’ajustement, mm',
  remarks: 'Remarques',
  nothing: '—',
  number: (number, isAgain) => (isAgain ? `${number} encore` : `${number}`),
  between: (oneCm, otherCm) => `${oneCm} à ${otherCm}`,
  repeats: (mark) => `nouveau passage par la résonance du repère ${mark}`,
  leftOut: 'écarté de l’ajustement',
  outlier: (cause) => `valeur aberrante : ${cause}`,
  below: (shown, all) =>
    shown === all
      ? 'Longueurs telles que la règle les donne.'
      : `Longueurs telles que la règle les donne. Sur ${all} repères, les ${shown} premiers sont imprimés ; les tableaux des Dossiers les contiennent tous.`,
};

export const comparisonPart: LaterWords['comparisonPart'] = {
  heading: 'Comparaison avec la théorie',
  headingHidden: 'Comparaison',
  hidden: 'Cette séance cache la vitesse prévue.',
  theory:
    'La vitesse prévue est celle du son dans l’air à la température, à l’humidité et à la pression notées (Cramer 1993) ; dans un autre gaz, c’est √(γRT/M).',
  place: (place, difference) =>
    difference === null
      ? `${place} : la température de l’air n’a pas été notée, aucune vitesse ne peut être prévue.`
      : `${place} : vitesse mesurée moins vitesse prévue : ${difference}.`,
  pairsLeft: (pairs) =>
    `${counted(pairs, 'autre paire de lieux n’est pas imprimée', 'autres paires de lieux ne sont pas imprimées')}. « Comparer » sur la page montre la différence entre deux lieux au choix.`,
};
