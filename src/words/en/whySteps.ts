/** Why a step of the working is done, with a source. */
export const workingWhy = {
  difference: {
    closed: (farCm: string, nearCm: string) =>
      `Each column acts longer than its tube by the same e, so e drops out of ${farCm} cm − ${nearCm} cm: no mouth can spoil λ. (Resonant lengths: OpenStax University Physics 1, section 17.4.)`,
    open: (farCm: string, nearCm: string) =>
      `Each column acts longer than its tube by the same 2e, so 2e drops out of ${farCm} cm − ${nearCm} cm: no mouth can spoil λ. (Resonant lengths: OpenStax University Physics 1, section 17.4.)`,
  },
  noEnd: 'It can hardly be zero or less: one of the two lengths was misread, or its order is another.',
  beyondRim: (endMm: string) =>
    `The air just outside the mouth swings along, so the wave turns round ${endMm} mm beyond the rim of this tube.`,
  beyondRimOfRadius: (endMm: string, radii: string) =>
    `The air just outside the mouth swings along, so the wave turns round ${endMm} mm beyond the rim of this tube, ${radii} of its radius.`,
  endKnown: (known: string) =>
    `One length can’t separate e and λ, so e is taken from what is known of this mouth: ${known}.`,
  theoryOfEnds: (thinRadii: string, flangedRadii: string) =>
    `Theory has ${thinRadii} radii for a thin rim (Levine & Schwinger 1948) and ${flangedRadii} with a flange (Nomura 1960).`,
  ideal: 'The mouth is said to be ideal, so e is held at zero.',
  endOfMouth: (endMm: string) =>
    `The marks alone don’t give e; what is known of the mouth does, and e = ${endMm} mm.`,
  endOfBoth: (marksMm: string, marksUncertaintyMm: string, endMm: string) =>
    `The marks alone say e = ${marksMm} ± ${marksUncertaintyMm} mm. What is known of the mouth is one more value beside them, each counts by its uncertainty, and e = ${endMm} mm.`,
  mouthSources: '(Mouths: Levine & Schwinger 1948; Nomura 1960; Dalmont, Nederveen & Joly 2001.)',
  walls: (layerMm: string, hertz: string, radiusMm: string, percent: string) =>
    `At the wall the air sticks and gives off heat, in a layer of ${layerMm} mm at ${hertz} Hz. In a tube of ${radiusMm} mm radius that takes ${percent} % of the speed; a narrower one takes more. (Zwikker & Kosten 1949, ch. II; Keefe 1984.)`,
  loudest: (mm: string) =>
    `The microphone hears the fork beside the column. Their sum is loudest where the two are nearest in step, not where the column swings most but beside it: here with a standard uncertainty of ${mm} mm. (Width of a resonance: Fletcher & Rossing 1998, ch. 8.)`,
  squares: (sumMps: string) =>
    `Independent errors rarely all go one way, so their squares add: the sum is not ${sumMps} m/s, as it would be without squares. (JCGM 100:2008, 5.1.2.)`,
  coverage: (degrees: string, factor: string, normalFactor: string) =>
    `u covers about two of three cases. To cover 95 of 100, ν = ${degrees} asks for k = ${factor}; it would be ${normalFactor} if u were known exactly. (JCGM 100:2008, G.3 and G.4.)`,
  warmth: (mpsPerDegree: string) =>
    `Warm molecules are faster, and they carry the sound: c grows with the root of the absolute temperature, here by ${mpsPerDegree} m/s for each degree. (OpenStax University Physics 1, section 17.2.)`,
  noEndCorrection: 'no end correction, as in exercises',
  inRadii: (value: string, uncertainty: string) => `${value} ± ${uncertainty} radii`,
};
