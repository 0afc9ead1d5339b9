import type { LaterWords } from '../catalogue.ts';

export const workingWhy: LaterWords['workingWhy'] = {
  difference: {
    closed: (farCm, nearCm) =>
      `Chaque colonne se comporte comme si elle dépassait de son tube de la même longueur e, donc e s’élimine dans ${farCm}\u00a0cm − ${nearCm}\u00a0cm\u00a0: l’embouchure ne peut pas fausser λ. (Longueurs de résonance\u00a0: OpenStax University Physics 1, section 17.4.)`,
    open: (farCm, nearCm) =>
      `Chaque colonne se comporte comme si elle dépassait de son tube de la même longueur 2e, donc 2e s’élimine dans ${farCm}\u00a0cm − ${nearCm}\u00a0cm\u00a0: les embouchures ne peuvent pas fausser λ. (Longueurs de résonance\u00a0: OpenStax University Physics 1, section 17.4.)`,
  },
  noEnd:
    'Elle ne peut guère être nulle ou négative : une des deux longueurs a été mal lue, ou son ordre est un autre.',
  beyondRim: (endMm) =>
    `L’air juste devant l’embouchure oscille aussi, donc l’onde est réfléchie ${endMm}\u00a0mm au-delà du bord de ce tube.`,
  beyondRimOfRadius: (endMm, radii) =>
    `L’air juste devant l’embouchure oscille aussi, donc l’onde est réfléchie ${endMm}\u00a0mm au-delà du bord de ce tube, soit ${radii} fois son rayon.`,
  endKnown: (known) =>
    `Une seule longueur ne peut pas séparer e et λ, donc e vient de ce qu’on sait de cette embouchure\u00a0: ${known}.`,
  theoryOfEnds: (thinRadii, flangedRadii) =>
    `La théorie donne ${thinRadii} fois le rayon pour un bord mince (Levine & Schwinger 1948) et ${flangedRadii} fois avec une collerette (Nomura 1960).`,
  ideal: 'L’embouchure est indiquée comme idéale, donc e reste nul.',
  endOfMouth: (endMm) =>
    `Les repères seuls ne donnent pas e\u00a0; ce qu’on sait de l’embouchure le donne, et e = ${endMm}\u00a0mm.`,
  endOfBoth: (marksMm, marksUncertaintyMm, endMm) =>
    `Les repères seuls disent e = ${marksMm} ± ${marksUncertaintyMm}\u00a0mm. Ce qu’on sait de l’embouchure est une valeur de plus à côté d’eux, chacune compte selon son incertitude, et e = ${endMm}\u00a0mm.`,
  mouthSources: '(Embouchures : Levine & Schwinger 1948 ; Nomura 1960 ; Dalmont, Nederveen & Joly 2001.)',
  walls: (layerMm, hertz, radiusMm, percent) =>
    `À la paroi, l’air adhère et cède de la chaleur, dans une couche de ${layerMm}\u00a0mm à ${hertz}\u00a0Hz. Dans un tube de ${radiusMm}\u00a0mm de rayon, cela enlève ${percent}\u00a0% de la vitesse\u00a0; dans un tube plus étroit, davantage. (Zwikker & Kosten 1949, chap. II\u00a0; Keefe 1984.)`,
  loudest: (mm) =>
    `Le micro entend le diapason en plus de la colonne. Leur somme est la plus forte là où les deux sont le plus près d’être en phase, non pas là où la colonne vibre le plus, mais à côté\u00a0: ici avec une incertitude-type de ${mm}\u00a0mm. (Largeur d’une résonance\u00a0: Fletcher & Rossing 1998, chap. 8.)`,
  squares: (sumMps) =>
    `Des erreurs indépendantes vont rarement toutes dans le même sens, donc ce sont leurs carrés qui s’ajoutent\u00a0: la somme n’est pas ${sumMps}\u00a0m/s, comme elle le serait sans les carrés. (JCGM 100:2008, 5.1.2.)`,
  coverage: (degrees, factor, normalFactor) =>
    `u couvre environ deux cas sur trois. Pour en couvrir 95 sur 100, avec ν = ${degrees}, il faut k = ${factor}\u00a0; ce serait ${normalFactor} si u était connue exactement. (JCGM 100:2008, G.3 et G.4.)`,
  warmth: (mpsPerDegree) =>
    `Les molécules chaudes sont plus rapides, et ce sont elles qui portent le son\u00a0: c croît comme la racine carrée de la température absolue, ici de ${mpsPerDegree}\u00a0m/s par degré. (OpenStax University Physics 1, section 17.2.)`,
  noEndCorrection: 'pas de correction d’extrémité, comme dans les exercices',
  inRadii: (value, uncertainty) => `${value} ± ${uncertainty} fois le rayon`,
};
