import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

/** "1 fois", "2 fois". */
const times = (count: number): string => counted(count, 'fois', 'fois');

export const listening: FirstWords['listening'] = {
  between: (fromS, toS, said) => `Entre ${fromS} et ${toS}\u00a0s\u00a0: ${said}`,
  slower: 'Faites glisser plus lentement : la largeur d’une main en quatre secondes.',
  noFork: (toleranceHz, nominalHz) =>
    `Aucun son stable à moins de ${toleranceHz}\u00a0Hz de ${nominalHz}\u00a0Hz n’a été entendu\u00a0: vérifiez la fréquence gravée sur le diapason, frappez plus fort ou rapprochez le diapason du micro.`,
  otherFork: (toleranceHz, nominalHz, otherHz) =>
    `Aucun son stable à moins de ${toleranceHz}\u00a0Hz de ${nominalHz}\u00a0Hz n’a été entendu, mais il y en a un vers ${otherHz}\u00a0Hz\u00a0: vérifiez la fréquence gravée sur le diapason et celle choisie sur cette page. Si c’est le bon diapason, il est loin de sa valeur gravée\u00a0: lesté, entaillé ou desserré.`,
  offStamp: (measuredHz, offsetHz, isAbove) =>
    `Le diapason sonne à ${measuredHz}\u00a0Hz, ${offsetHz}\u00a0Hz ${isAbove ? 'au-dessus' : 'au-dessous'} de sa valeur gravée\u00a0: utilisez la fréquence mesurée, et regardez si le diapason est entaillé.`,
  beating: (beatHz, isAbove) =>
    `Un autre diapason de fréquence presque égale sonne, ${beatHz}\u00a0Hz ${isAbove ? 'au-dessus' : 'au-dessous'} du vôtre\u00a0: il y a ${beatHz} battements par seconde. Faites-le étouffer, ou attendez qu’il se soit éteint.`,
  forkTurned: (turns, fromS) =>
    `Le son s’est éteint et est revenu inversé ${times(turns)} à partir de ${fromS}\u00a0s, comme quand on tourne un diapason autour de sa tige\u00a0: gardez une même branche face à l’embouchure.`,
  tooFast: (halfPowerS, slower) =>
    `Les résonances sont passées en ${halfPowerS}\u00a0s, trop vite\u00a0: la colonne n’a pas eu le temps d’atteindre sa pleine intensité. ${slower}`,
  tooFastAt: (timeS, slower) =>
    `À ${timeS}\u00a0s une résonance est passée trop vite\u00a0: la colonne n’a pas eu le temps d’atteindre sa pleine intensité, et le repère manque peut-être. ${slower}`,
  clipping: (count) =>
    `L’entrée a été trop forte ${times(count)}\u00a0: éloignez le micro ou baissez son gain.`,
  overdriven: (percent, count) =>
    `Le son a été écrêté ${times(count)} à ${percent}\u00a0% de la pleine échelle, avant d’arriver à l’enregistreur\u00a0: éloignez le micro ou baissez son gain.`,
  tooFaint: (percent) =>
    `Le moment le plus fort n’atteint que ${percent}\u00a0% de la pleine échelle\u00a0: augmentez le gain du micro ou rapprochez-le de l’embouchure de la colonne.`,
  gainPumping:
    'La salle devient plus silencieuse quand le diapason est fort : un gain automatique change le volume, et les niveaux ne sont pas comparables. Désactivez le gain automatique, la suppression du bruit et l’annulation d’écho du micro.',
  tooShort:
    'L’enregistrement dure moins d’une seconde : trop court pour y trouver un diapason. Enregistrez un glissement entier.',
  silent: 'Aucun son n’arrive : le micro est coupé, ou ce n’est pas le bon.',
  gap: (losses, timeS) =>
    `Du son a été perdu ${times(losses)}, d’abord à ${timeS}\u00a0s\u00a0: aucune résonance n’y reçoit de repère. Fermez les autres programmes et refaites le glissement à cet endroit.`,
  dropouts: (count) =>
    `Le son s’est interrompu et est revenu ${times(count)}\u00a0: les niveaux y sont trop bas. Fermez les autres programmes, ou utilisez un micro à fil.`,
  dropoutsFrom: (count, timeS) =>
    `Le son s’est interrompu et est revenu ${times(count)}, d’abord à ${timeS}\u00a0s\u00a0: les niveaux y sont trop bas. Fermez les autres programmes, ou utilisez un micro à fil.`,
  narrowBand: (edgeKhz) =>
    `Il n’y a rien au-dessus de ${edgeKhz}\u00a0kHz\u00a0: c’est typique de paroles loin du micro, d’un casque en mode appel ou de l’enregistrement d’un téléphone. La fréquence du diapason est plus basse et s’entend. Si les niveaux paraissent étranges, faites le contrôle du gain ou choisissez le micro de l’appareil.`,
  highBandMissing: (edgeKhz) =>
    `Il n’y a rien au-dessus de ${edgeKhz}\u00a0kHz\u00a0: c’est typique d’une salle calme, d’une suppression du bruit ou d’un fichier très compressé. La fréquence du diapason est plus basse et s’entend. Si les niveaux paraissent étranges, faites le contrôle du gain\u00a0; enregistrez en WAV si possible.`,
  floorFell: (fallDb) =>
    `Le silence entre les sons est tombé de ${fallDb}\u00a0dB sous le bruit initial de la salle\u00a0: soit la salle s’est calmée, soit une suppression du bruit s’est mise en marche. Avec un micro, faites le contrôle du gain avant de vous fier à un niveau.`,
  offset: (percent) =>
    `Le son a une composante continue de ${percent}\u00a0% de la pleine échelle\u00a0: un défaut de la carte son ou de sa prise. Les niveaux à la fréquence du diapason sont bons malgré tout\u00a0; essayez une autre entrée si le son est écrêté.`,
  hum: (mainsHz, levelDb) =>
    `Le ronflement du secteur à ${mainsHz}\u00a0Hz est fort (${levelDb}\u00a0dB)\u00a0: débranchez le chargeur, ou éloignez-vous des alimentations et des lampes.`,
  cutOff: 'La fin de ce fichier manque : il a été coupé. Ce qui est là est utilisé.',
};

export const unheardFrequency: FirstWords['unheardFrequency'] = {
  sampleRate: {
    what: (sampleRateHz, lowestHz, highestHz) =>
      `Ce son a une fréquence d’échantillonnage de ${sampleRateHz}\u00a0Hz\u00a0; cette page peut utiliser de ${lowestHz} à ${highestHz}\u00a0Hz.`,
    advice: (usualRates) => `Enregistrez à ${usualRates}\u00a0Hz.`,
  },
  frequency: {
    what: (frequencyHz, sampleRateHz, lowestHz, highestHz) =>
      `Une fréquence de ${frequencyHz}\u00a0Hz ne peut pas être entendue avec la fréquence d’échantillonnage de ce son, ${sampleRateHz}\u00a0Hz\u00a0: seulement de ${lowestHz} à ${highestHz}\u00a0Hz.`,
    advice: (usualRates) =>
      `Enregistrez à ${usualRates}\u00a0Hz (le micro d’un casque donne souvent moins), ou choisissez une autre fréquence. Vous pouvez quand même taper des longueurs.`,
  },
};
