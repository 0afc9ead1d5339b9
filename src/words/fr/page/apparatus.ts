import type { LaterWords } from '../../catalogue.ts';
import { fixed, hertz } from '../../numbers.ts';

export const tube: LaterWords['tube'] = {
  heading: 'Tube et règle',
  diameter: 'Diamètre intérieur',
  diameterHint: 'pour la correction d’extrémité et le ralentissement dû à la paroi',
  otherDiameter: 'Diamètre à l’autre extrémité',
  otherDiameterHint: 'd’un tube qui coulisse dans un autre, ouvert aux deux extrémités ; vide : le même',
  travel: 'Colonne la plus longue',
  travelHint: 'la plus grande longueur réglable',
  stopper: 'Colonne fermée par',
  stoppers: {
    piston: 'un piston',
    dipped: 'de l’eau, le tube bouge',
    filled: 'de l’eau, son niveau bouge',
  },
  reading: 'Incertitude de lecture',
  readingHint: (taken) =>
    `incertitude-type d’une longueur, recherche de la résonance comprise. Si le champ reste vide\u00a0: ${taken}.`,
  zero: 'Décalage du zéro',
  zeroHint: 'ce que la règle indique quand la colonne a une longueur nulle ; retranché de chaque lecture',
  caution:
    'Un tube de verre casse facilement\u00a0: serrez-le en douceur, et tenez l’eau loin de l’ordinateur. Les règles de sécurité de votre laboratoire passent avant tout.',
};

export const mouthChoice: LaterWords['mouthChoice'] = {
  legend: 'Embouchure du tube',
  lead: 'La colonne se comporte comme si elle était plus longue que son tube ; de combien, cela dépend de l’embouchure (tirets dans les images). Cette valeur compte avec vos longueurs, qui la corrigent si elles sont plus précises.',
  notDescribed: 'Non décrite',
  anyOf: 'Ce peut être l’une des suivantes.',
  ratio: (ratio, uncertainty) => `Correction d’extrémité : (${ratio} ± ${uncertainty}) fois le rayon.`,
  names: {
    'thin-rim': 'Bord mince',
    'thick-rim': 'Bord épais',
    flange: 'Collerette',
    obstructed: 'Objet proche',
    ideal: 'Idéale',
  },
  shapes: {
    'thin-rim': 'Un tube nu, de paroi plus mince qu’un dixième de son rayon.',
    'thick-rim': 'Une paroi d’un dixième à la moitié du rayon.',
    flange: 'Une plaque autour de l’embouchure, ou le tube débouche dans un mur.',
    obstructed: 'Une main, un support ou un diapason épais à moins d’un diamètre.',
    ideal: 'Comme dans les exercices : pas de correction d’extrémité.',
  },
};

export const forks: LaterWords['forks'] = {
  heading: 'Diapasons',
  lead: 'Fréquence gravée et son incertitude-type\u00a0; elles servent tant que le diapason n’est pas mesuré.',
  pitch: (number) => `Diapason ${number}`,
  uncertainty: (number) => `± diapason ${number}`,
  remove: 'Retirer',
  removeNamed: (number) => `Retirer le diapason ${number}`,
  notMeasured: 'Pas encore mesuré (voir Vérifier).',
  measured: (frequencyHz, standardUncertaintyHz) =>
    `Mesuré ${fixed(frequencyHz, 2)} ± ${fixed(standardUncertaintyHz, 2)}\u00a0Hz ; l’ajustement utilise cette valeur.`,
  useStamp: 'Utiliser la valeur gravée',
  add: 'Ajouter un diapason',
  choose: 'choisir sa fréquence…',
  offered: (frequencyHz) => `${hertz(frequencyHz)}\u00a0Hz`,
  others: 'Autre fréquence : ajoutez la plus proche, puis corrigez le nombre.',
  caution:
    'Frappez le diapason sur du caoutchouc ou une semelle, jamais sur du verre ou une arête dure. Tenez un diapason qui vibre loin des dents et du verre.',
};

export const places: LaterWords['places'] = {
  heading: 'Lieux et air',
  lead: 'Ce qu’indiquent sur place le thermomètre, l’hygromètre et le baromètre. Laissez vide ce que vous n’avez pas lu.',
  place: (number) => `Lieu ${number}`,
  name: 'Nom',
  remove: 'Retirer',
  removeNamed: (number) => `Retirer le lieu ${number}`,
  temperature: 'Température de l’air',
  temperatureUncertainty: 'Son incertitude',
  temperatureUncertaintyHint: 'pour l’air dans le tube\u00a0: les mains et le souffle le réchauffent',
  filling: 'Gaz dans le tube',
  humidity: 'Humidité',
  pressure: 'Pression',
  co2: 'Dioxyde de carbone',
  add: 'Ajouter un lieu',
};
