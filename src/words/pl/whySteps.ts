import type { LaterWords } from '../catalogue.ts';

export const workingWhy: LaterWords['workingWhy'] = {
  difference: {
    closed: (farCm, nearCm) =>
      `Każdy słup zachowuje się tak, jakby był dłuższy od rury o to samo e, więc e znika z różnicy ${farCm}\u00a0cm − ${nearCm}\u00a0cm: wylot nie ma wpływu na λ. (Długości rezonansowe: OpenStax University Physics 1, rozdział 17.4.)`,
    open: (farCm, nearCm) =>
      `Każdy słup zachowuje się tak, jakby był dłuższy od rury o to samo 2e, więc 2e znika z różnicy ${farCm}\u00a0cm − ${nearCm}\u00a0cm: wylot nie ma wpływu na λ. (Długości rezonansowe: OpenStax University Physics 1, rozdział 17.4.)`,
  },
  noEnd:
    'Raczej nie może być równa zeru ani ujemna: jedną z dwóch długości odczytano błędnie albo jej rząd jest inny.',
  beyondRim: (endMm) =>
    `Powietrze tuż za wylotem też drga, więc fala zawraca dopiero ${endMm}\u00a0mm za brzegiem tej rury.`,
  beyondRimOfRadius: (endMm, radii) =>
    `Powietrze tuż za wylotem też drga, więc fala zawraca dopiero ${endMm}\u00a0mm za brzegiem tej rury, czyli ${radii} jej promienia.`,
  endKnown: (known) =>
    `Jedna długość nie rozdzieli e i λ, więc e pochodzi z tego, co wiadomo o tym wylocie: ${known}.`,
  theoryOfEnds: (thinRadii, flangedRadii) =>
    `Teoria podaje ${thinRadii} promienia dla cienkiego brzegu (Levine & Schwinger 1948) i ${flangedRadii} z kołnierzem (Nomura 1960).`,
  ideal: 'Wylot podano jako idealny, więc e pozostaje równe zeru.',
  endOfMouth: (endMm) =>
    `Same znaczniki nie wyznaczają e; wyznacza je to, co wiadomo o wylocie, i e = ${endMm}\u00a0mm.`,
  endOfBoth: (marksMm, marksUncertaintyMm, endMm) =>
    `Same znaczniki dają e = ${marksMm} ± ${marksUncertaintyMm}\u00a0mm. To, co wiadomo o wylocie, jest obok nich jeszcze jedną wartością; każda liczy się według swojej niepewności i e = ${endMm}\u00a0mm.`,
  mouthSources: '(Wyloty: Levine & Schwinger 1948; Nomura 1960; Dalmont, Nederveen & Joly 2001.)',
  walls: (layerMm, hertz, radiusMm, percent) =>
    `Przy ściance powietrze przywiera i oddaje ciepło, w warstwie ${layerMm}\u00a0mm przy ${hertz}\u00a0Hz. W rurze o promieniu ${radiusMm}\u00a0mm zmniejsza to prędkość o ${percent}\u00a0%, w węższej o więcej. (Zwikker & Kosten 1949, rozdz. II; Keefe 1984.)`,
  loudest: (mm) =>
    `Mikrofon słyszy oprócz słupa także kamerton. Oba razem są najgłośniejsze tam, gdzie ich fazy są najbardziej zgodne: nie tam, gdzie słup drga najmocniej, lecz obok, tutaj z niepewnością standardową ${mm}\u00a0mm. (Szerokość rezonansu: Fletcher & Rossing 1998, rozdz. 8.)`,
  squares: (sumMps) =>
    `Niezależne błędy rzadko idą wszystkie w jedną stronę, dlatego dodaje się ich kwadraty: bez kwadratów wyszłoby ${sumMps}\u00a0m/s, czyli za dużo. (JCGM 100:2008, 5.1.2.)`,
  coverage: (degrees, factor, normalFactor) =>
    `Przedział ± u obejmuje około dwóch z trzech przypadków. Żeby objąć 95 na 100, przy ν = ${degrees} potrzeba k = ${factor}; byłoby to ${normalFactor}, gdyby u było znane dokładnie. (JCGM 100:2008, G.3 i G.4.)`,
  warmth: (mpsPerDegree) =>
    `Ciepłe cząsteczki są szybsze, a to one niosą dźwięk: c rośnie z pierwiastkiem temperatury bezwzględnej, tutaj o ${mpsPerDegree}\u00a0m/s na każdy stopień. (OpenStax University Physics 1, rozdział 17.2.)`,
  noEndCorrection: 'bez poprawki na końcu rury, jak w zadaniach',
  inRadii: (value, uncertainty) => `${value} ± ${uncertainty} promienia`,
};
