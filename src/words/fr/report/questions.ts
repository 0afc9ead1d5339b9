import type { LaterWords } from '../../catalogue.ts';
import { ordinal } from '../grammar.ts';

export const questions: LaterWords['questions'] = {
  outlier: (cm, apartMm) =>
    `Le repère à ${cm}\u00a0cm est à ${apartMm}\u00a0mm des autres. Que s’est-il peut-être passé, et comment le vérifieriez-vous ?`,
  outlierHidden: (cm) =>
    `Le repère à ${cm}\u00a0cm est à l’écart des autres. Que s’est-il peut-être passé, et comment le vérifieriez-vous ?`,
  largestPart: (source) =>
    `La plus grande part de l’incertitude vient de ceci : ${source}. Que changeriez-vous pour la réduire de moitié ?`,
  largestPartHidden:
    'D’où vient la plus grande part de l’incertitude ? Que changeriez-vous pour la réduire de moitié ?',
  sources: {
    reading: 'la lecture des longueurs',
    fork: 'la fréquence du diapason',
    loudest: 'la position la plus sonore, qui est à côté de la résonance',
    zero: 'le zéro de la règle',
    scale: 'les graduations de la règle',
    end: 'la correction d’extrémité',
    wall: 'la paroi du tube, qui ralentit l’onde',
  },
  endMeasured: (endMm, diameterMm) =>
    `Votre correction d’extrémité est de ${endMm}\u00a0mm pour un tube de ${diameterMm}\u00a0mm. Que serait-elle pour un tube deux fois plus large, et comment le vérifieriez-vous ?`,
  endMeasuredHidden:
    'La colonne se comporte comme si elle était plus longue qu’elle ne l’est. Comment vos longueurs le montrent-elles ? Comment la vitesse change-t-elle si vous n’en tenez pas compte ?',
  oneOrder: (forkHz) =>
    `Tous les repères sont d’une seule résonance. Que peut vous apprendre une deuxième résonance du diapason de ${forkHz}\u00a0Hz, que celle-ci ne dit pas ?`,
  noTemperature: (speedMps) =>
    `Aucune température n’a été notée. À quelle température de l’air la vitesse serait-elle de ${speedMps}\u00a0m/s ? Est-ce vraisemblable dans votre salle ?`,
  noTemperatureHidden:
    'Aucune température n’a été notée. À quelle température de l’air correspondrait votre vitesse ? Est-ce vraisemblable dans votre salle ?',
  apartFromTheory: (differenceMps) =>
    `L’écart entre vitesse mesurée et vitesse prévue est de ${differenceMps}\u00a0m/s, plus que ce que les incertitudes expliquent. Quelle erreur, à elle seule, donnerait exactement cet écart ?`,
  apartFromTheoryHidden:
    'Comparez votre vitesse à la vitesse prévue. Quelle erreur, à elle seule, donnerait exactement cet écart ?',
  nearTheory: (differenceMps) =>
    `L’écart entre vitesse mesurée et vitesse prévue est de ${differenceMps}\u00a0m/s, dans les incertitudes. Cela prouve-t-il la théorie ? Quel est le plus petit écart que vous auriez pu trouver ?`,
  nearTheoryHidden:
    'Comparez votre vitesse à la vitesse prévue. Quel est le plus petit écart que vous auriez pu trouver ?',
  twoPlaces: (oneMps, otherMps) =>
    `Vous avez trouvé ${oneMps} et ${otherMps}\u00a0m/s dans deux lieux. Quelles erreurs sont les mêmes dans les deux, et qu’en résulte-t-il pour leur différence ?`,
  twoPlacesHidden:
    'Vous avez mesuré dans deux lieux. Quelles erreurs sont les mêmes dans les deux, et qu’en résulte-t-il pour la différence des vitesses ?',
  nextResonance: (order, forkHz) =>
    `À quelle longueur chercheriez-vous la ${ordinal(order)} résonance du diapason de ${forkHz}\u00a0Hz ? Dites à quel point vous en êtes sûr.`,
};
