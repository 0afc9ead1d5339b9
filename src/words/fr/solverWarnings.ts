import type { LaterWords } from '../catalogue.ts';
import { plural } from './grammar.ts';

export const solverWarning: LaterWords['solverWarning'] = {
  noMarks:
    'Aucun repère n’a encore de longueur utilisable. Placez un repère sur une résonance et lisez sa longueur.',
  noOrders: 'Aucun choix d’ordres ne convient à ces repères.',
  contradiction:
    'Avec ces ordres, une colonne plus longue aurait une onde plus courte. Vérifiez les longueurs et les ordres fixés.',
  outlier: (mark, cause) => `${mark} ne convient pas et ne compte pas dans l’ajustement. ${cause}`,
  inconsistent: (marks) =>
    `Les repères se contredisent, et on ne peut pas dire lequel de ceux-ci est faux\u00a0: ${marks}. Refaites-les.`,
  bracketWide: (mark) =>
    `Les deux longueurs sont trop éloignées pour bien situer la résonance\u00a0: ${mark}.`,
  nothingFits:
    'La plupart de ces longueurs ne conviennent à aucune résonance, avec une même vitesse et une même correction d’extrémité. Vérifiez l’unité des longueurs, le diapason et les extrémités avant d’utiliser le résultat.',
  nothingFitsDiameter:
    'La plupart de ces longueurs ne conviennent à aucune résonance, avec une même vitesse et une même correction d’extrémité. Vérifiez l’unité des longueurs et celle du diamètre, le diapason et les extrémités avant d’utiliser le résultat.',
  columnType: {
    closed:
      'Ces longueurs ne conviennent pas à une colonne ouverte aux deux extrémités, mais conviendraient à une colonne fermée à une extrémité. Vérifiez quelles extrémités étaient ouvertes.',
    open: 'Ces longueurs ne conviennent pas à une colonne fermée à une extrémité, mais conviendraient à une colonne ouverte aux deux extrémités. Vérifiez quelles extrémités étaient ouvertes.',
  },
  lengthUnit: (unit) =>
    `Ces longueurs ne conviennent pas telles quelles, mais elles conviendraient en ${unit}. Vérifiez l’unité.`,
  orderAmbiguous: (marks) =>
    `Plus d’un choix d’ordres convient\u00a0: ${marks}. Placez un repère sur une résonance voisine, ou fixez l’ordre.`,
  orderOf: (mark, order, percent, rival) =>
    `${mark}\u00a0: ordre ${order} (${percent}\u00a0%)${rival === null ? '' : `, sinon ${rival}`}`,
  orderDoubtful: (marks) =>
    `L’ordre fixé ne convient pas à de l’air dans ce tube\u00a0: ${marks}. Laissez l’ordre sur «\u00a0auto\u00a0», ou vérifiez le diapason.`,
  skippedOrders: (gaps) =>
    `Il manque un repère ici\u00a0: ${gaps}. Une résonance a-t-elle été manquée\u00a0?`,
  gap: {
    closed: (orders, hertz) => `ordre ${orders} (${hertz}\u00a0Hz, fermée)`,
    open: (orders, hertz) => `ordre ${orders} (${hertz}\u00a0Hz, ouverte)`,
  },
  otherExplanation: (others, percentAsNoted) =>
    `Ces nombres pourraient aussi vouloir dire autre chose\u00a0: ${others}\u00a0; comme noté ${percentAsNoted}\u00a0%. Vérifiez le diapason, l’unité et le gaz, ou placez un repère sur la première résonance.`,
  odds: (explanation, percent) => `${explanation} (${percent}\u00a0%)`,
  otherUnit: (unit) => `des longueurs en ${unit}`,
  otherFork: (hertz) => `un diapason de ${hertz}\u00a0Hz`,
  otherGas: (gas) => `un autre gaz dans le tube, ${gas}`,
  exactRepeats: (copies) =>
    `${plural(copies, 'Un repère est identique', `${copies} repères sont identiques`)} en tout à un autre et ${plural(copies, 'n’est pas compté', 'ne sont pas comptés')} une seconde fois. Collé deux fois\u00a0? ${plural(copies, 'Écartez-le', 'Écartez-les')}. Lu deux fois\u00a0? Dites quand dans le tableau, sous made_at.`,
  forksAlike: (forks) =>
    `${forks} comptent pour un seul diapason, écrit de deux façons. Si ce sont deux diapasons, mesurez leur fréquence et indiquez fork_uncertainty_hz.`,
  hertz: (hertz) => `${hertz}\u00a0Hz`,
  tubeTooWide: (millimetres, hertz, ka) =>
    `Un tube de ${millimetres}\u00a0mm est trop large pour ${hertz}\u00a0Hz\u00a0: le son n’y est plus une onde plane (ka = ${ka}), et la correction d’extrémité prévue n’est plus valable. Prenez un tube plus étroit ou un diapason plus grave.`,
  allUnchecked:
    'Rien dans ces repères ne pourrait révéler une erreur de lecture : deux longueurs conviennent toujours. Une troisième résonance la montrerait.',
  unchecked: (marks) =>
    `Rien ici ne pourrait révéler une erreur de lecture\u00a0: ${marks}. Placez un repère sur une résonance de plus, ou relisez la longueur.`,
  speedOfAir: {
    cold: (celsius) =>
      `C’est la vitesse du son dans de l’air à ${celsius}\u00a0°C. La salle était-elle si froide\u00a0? Sinon, vérifiez la fréquence du diapason, l’unité des longueurs et le gaz.`,
    warm: (celsius) =>
      `C’est la vitesse du son dans de l’air à ${celsius}\u00a0°C. La salle était-elle si chaude\u00a0? Sinon, vérifiez la fréquence du diapason, l’unité des longueurs et le gaz.`,
  },
  speedOfNoAir: {
    cold: 'Aucun air n’est aussi froid qu’il le faudrait pour cette vitesse. Vérifiez la fréquence du diapason, l’unité des longueurs et le gaz.',
    warm: 'Aucun air n’est aussi chaud qu’il le faudrait pour cette vitesse. Vérifiez la fréquence du diapason, l’unité des longueurs et le gaz.',
  },
  scatter: (factor) =>
    `Les longueurs sont dispersées ${factor} fois plus qu’indiqué ou supposé\u00a0; l’incertitude du résultat est augmentée.`,
  endImplausible: (millimetres) =>
    `La correction d’extrémité obtenue est de ${millimetres}\u00a0mm. Vérifiez le zéro de la règle et les extrémités.`,
  endImplausibleInRadii: (millimetres, radii, usualRadii) =>
    `La correction d’extrémité obtenue est de ${millimetres}\u00a0mm, soit ${radii} fois le rayon\u00a0; d’habitude c’est environ ${usualRadii} fois. Vérifiez le zéro de la règle, le diamètre et les extrémités.`,
  speedImplausible: (mps, lowest, highest) =>
    `${mps}\u00a0m/s est hors de l’intervalle de ${lowest} à ${highest}\u00a0m/s pour l’air. Vérifiez la fréquence du diapason et les ordres.`,
  aboveTheory: (mps) =>
    `Le résultat dépasse la vitesse prévue de ${mps}\u00a0m/s, plus que les deux incertitudes ne le permettent. Vérifiez ce qui est à l’embouchure, les longueurs et le zéro de la règle, puis le thermomètre et la fréquence du diapason.`,
  belowTheory: (mps) =>
    `Le résultat est inférieur à la vitesse prévue de ${mps}\u00a0m/s, plus que les deux incertitudes ne le permettent. Vérifiez ce qui est à l’embouchure, les longueurs et le zéro de la règle, puis le thermomètre et la fréquence du diapason.`,
  agreeingFork: (hertz) => `Un diapason de ${hertz}\u00a0Hz conviendrait\u00a0: était-ce celui-là\u00a0?`,
  implausible:
    'La vitesse et la correction d’extrémité, ensemble, sont inhabituelles pour de l’air dans un tube.',
  tooFewMarks:
    'Un seul repère ne peut pas séparer la correction d’extrémité de la longueur d’onde. Placez un repère sur une deuxième résonance.',
  endFromTheory:
    'Les repères seuls donnent mal la correction d’extrémité. Ce qu’on sait de l’embouchure du tube est utilisé, avec son incertitude.',
  endUnknown: (expected, giveOrTake) =>
    `Les repères ne donnent pas la correction d’extrémité, et aucun diamètre n’est indiqué. On suppose ${expected}\u00a0mm, comme dans les tubes habituels, à ${giveOrTake}\u00a0mm près.`,
  noDiameter: (lowestPercent, highestPercent) =>
    `Aucun diamètre n’est indiqué\u00a0: on ne sait pas de combien la paroi ralentit l’onde (${lowestPercent} à ${highestPercent}\u00a0%). Rien n’est corrigé\u00a0; l’incertitude en tient compte.`,
  someDiametersMissing: 'Quand aucun diamètre n’est indiqué, la moyenne des autres est utilisée.',
  someTemperaturesMissing:
    'Quand aucune température de l’air n’est indiquée, la moyenne des autres est utilisée.',
  noTemperature:
    'Aucune température de l’air n’est indiquée : la vitesse ne peut pas être comparée à la vitesse prévue.',
  ifAir: (celsius, giveOrTake) =>
    `Si le gaz est de l’air, cette vitesse correspond à ${celsius}\u00a0°C, à ${giveOrTake}\u00a0°C près.`,
  airBeyondFormula:
    'Cet air est hors des intervalles de 0 à 30\u00a0°C et de 750 à 1020\u00a0hPa où la formule de la vitesse prévue a été vérifiée ; l’incertitude de cette vitesse est augmentée.',
};

export const unusableMark: LaterWords['unusableMark'] = {
  outOfRange: {
    frequencyHz: (mark, lowest, highest, value) =>
      `${mark} n’est pas utilisé\u00a0: sa fréquence doit aller de ${lowest} à ${highest}\u00a0Hz, et vaut ${value}\u00a0Hz.`,
    frequencyStandardUncertaintyHz: (mark, lowest, highest, value) =>
      `${mark} n’est pas utilisé\u00a0: l’incertitude de sa fréquence doit aller de ${lowest} à ${highest}\u00a0Hz, et vaut ${value}\u00a0Hz.`,
    lengthM: (mark, lowest, highest, value) =>
      `${mark} n’est pas utilisé\u00a0: sa longueur doit aller de ${lowest} à ${highest}\u00a0m, et vaut ${value}\u00a0m.`,
    otherLengthM: (mark, lowest, highest, value) =>
      `${mark} n’est pas utilisé\u00a0: son autre longueur doit aller de ${lowest} à ${highest}\u00a0m, et vaut ${value}\u00a0m.`,
    lengthStandardUncertaintyM: (mark, lowest, highest, value) =>
      `${mark} n’est pas utilisé\u00a0: l’incertitude de sa longueur doit aller de ${lowest} à ${highest}\u00a0m, et vaut ${value}\u00a0m.`,
    radiusM: (mark, lowest, highest, value) =>
      `${mark} n’est pas utilisé\u00a0: le rayon de son tube doit aller de ${lowest} à ${highest}\u00a0m, et vaut ${value}\u00a0m.`,
    otherRadiusM: (mark, lowest, highest, value) =>
      `${mark} n’est pas utilisé\u00a0: l’autre rayon de son tube doit aller de ${lowest} à ${highest}\u00a0m, et vaut ${value}\u00a0m.`,
    temperatureC: (mark, lowest, highest, value) =>
      `${mark} n’est pas utilisé\u00a0: sa température de l’air doit aller de ${lowest} à ${highest}\u00a0°C, et vaut ${value}\u00a0°C.`,
    humidityPct: (mark, lowest, highest, value) =>
      `${mark} n’est pas utilisé\u00a0: son humidité de l’air doit aller de ${lowest} à ${highest}\u00a0%, et vaut ${value}\u00a0%.`,
    pressurePa: (mark, lowest, highest, value) =>
      `${mark} n’est pas utilisé\u00a0: sa pression de l’air doit aller de ${lowest} à ${highest} Pa, et vaut ${value} Pa.`,
  },
  anotherGas: (mark, gas, firstGas) =>
    `${mark} n’est pas utilisé\u00a0: son gaz est ${gas}, celui du premier repère est ${firstGas}. Calculez chaque gaz séparément.`,
  orderNotWhole: (mark, order) =>
    `${mark} n’est pas utilisé\u00a0: son ordre doit être un nombre entier supérieur à 0, et vaut ${order}.`,
  air: (mark) =>
    `${mark} n’est pas utilisé\u00a0: la température, l’humidité et la pression de son air ne peuvent pas être toutes justes.`,
};
