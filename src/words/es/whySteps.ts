import type { LaterWords } from '../catalogue.ts';

export const workingWhy: LaterWords['workingWhy'] = {
  difference: {
    closed: (farCm, nearCm) =>
      `Cada columna se comporta como si su tubo fuera más largo, siempre en la misma longitud e. Por eso e desaparece al restar ${farCm}\u00a0cm − ${nearCm}\u00a0cm: la boca no influye en λ. (Longitudes de resonancia: OpenStax University Physics 1, sección 17.4.)`,
    open: (farCm, nearCm) =>
      `Cada columna se comporta como si su tubo fuera más largo, siempre en la misma longitud 2e. Por eso 2e desaparece al restar ${farCm}\u00a0cm − ${nearCm}\u00a0cm: la boca no influye en λ. (Longitudes de resonancia: OpenStax University Physics 1, sección 17.4.)`,
  },
  noEnd: 'Es muy difícil que sea cero o menos: una de las dos longitudes se leyó mal, o su orden es otro.',
  beyondRim: (endMm) =>
    `El aire justo fuera de la boca también oscila, así que la onda se refleja ${endMm}\u00a0mm más allá del borde de este tubo.`,
  beyondRimOfRadius: (endMm, radii) =>
    `El aire justo fuera de la boca también oscila, así que la onda se refleja ${endMm}\u00a0mm más allá del borde de este tubo, ${radii} veces su radio.`,
  endKnown: (known) =>
    `Una sola longitud no puede separar e y λ, así que e se toma de lo que se sabe de esta boca: ${known}.`,
  theoryOfEnds: (thinRadii, flangedRadii) =>
    `La teoría da ${thinRadii} veces el radio para un borde fino (Levine & Schwinger 1948) y ${flangedRadii} veces con una brida (Nomura 1960).`,
  ideal: 'Se indicó que la boca es ideal, así que e se deja en cero.',
  endOfMouth: (endMm) => `Las marcas solas no dan e; lo que se sabe de la boca sí, y e = ${endMm}\u00a0mm.`,
  endOfBoth: (marksMm, marksUncertaintyMm, endMm) =>
    `Las marcas solas dicen e = ${marksMm} ± ${marksUncertaintyMm}\u00a0mm. Lo que se sabe de la boca es un valor más junto a ellas, cada uno cuenta según su incertidumbre, y e = ${endMm}\u00a0mm.`,
  mouthSources: '(Bocas: Levine & Schwinger 1948; Nomura 1960; Dalmont, Nederveen & Joly 2001.)',
  walls: (layerMm, hertz, radiusMm, percent) =>
    `Junto a la pared el aire se pega y cede calor, en una capa de ${layerMm}\u00a0mm a ${hertz}\u00a0Hz. En un tubo de ${radiusMm}\u00a0mm de radio eso quita un ${percent}\u00a0% de la velocidad; en uno más estrecho, más. (Zwikker & Kosten 1949, cap. II; Keefe 1984.)`,
  loudest: (mm) =>
    `El micrófono oye el diapasón además de la columna. La suma suena más fuerte donde los dos están más cerca de ir en fase, no donde la columna vibra más, sino al lado: aquí con una incertidumbre típica de ${mm}\u00a0mm. (Anchura de una resonancia: Fletcher & Rossing 1998, cap. 8.)`,
  squares: (sumMps) =>
    `Los errores independientes rara vez van todos en el mismo sentido, así que se suman los cuadrados de las contribuciones: el resultado no es ${sumMps}\u00a0m/s, como al sumarlas sin elevarlas al cuadrado. (JCGM 100:2008, 5.1.2.)`,
  coverage: (degrees, factor, normalFactor) =>
    `u cubre unos dos de cada tres casos. Para cubrir 95 de cada 100, ν = ${degrees} pide k = ${factor}; sería ${normalFactor} si u se conociera exactamente. (JCGM 100:2008, G.3 y G.4.)`,
  warmth: (mpsPerDegree) =>
    `Las moléculas calientes son más rápidas, y son ellas las que llevan el sonido: c crece con la raíz cuadrada de la temperatura absoluta, aquí ${mpsPerDegree}\u00a0m/s por cada grado. (OpenStax University Physics 1, sección 17.2.)`,
  noEndCorrection: 'sin corrección de extremo, como en los ejercicios',
  inRadii: (value, uncertainty) => `${value} ± ${uncertainty} veces el radio`,
};
