import type { FirstWords } from '../../catalogue.ts';

export const practice: FirstWords['practice'] = {
  heading: 'Coluna de treino',
  strike: 'Bater no diapasão',
  forkAtMouth: 'Diapasão na boca',
  damp: 'Abafar',
  shorter: 'Um milímetro mais curta',
  longer: 'Um milímetro mais longa',
  shorterFine: 'Um quinto de milímetro mais curta',
  longerFine: 'Um quinto de milímetro mais longa',
  rule: 'Lupa: a régua junto ao pistão',
  room: 'Sala',
  rooms: { quiet: 'silenciosa', talk: 'alguma conversa', 'full class': 'turma cheia' },
  instruments: (celsius, humidityPercent, diameterMm) =>
    `Instrumentos: ${celsius}\u00a0°C, umidade ${humidityPercent}\u00a0%, tubo com ${diameterMm}\u00a0mm de diâmetro interno`,
  instrumentsApart: (celsius, humidityPercent, diameterMm, place) =>
    `Instrumentos: ${celsius}\u00a0°C, umidade ${humidityPercent}\u00a0%, tubo com ${diameterMm}\u00a0mm de diâmetro interno. O local atual é outra sala; por isso, são anotados em um local próprio: “${place}”`,
  note: 'Anotar estas leituras',
  noted: 'As leituras estão anotadas em Montagem.',
  notedApart: (place) =>
    `As leituras estão anotadas em Montagem, em um local próprio: “${place}”. O que você medir agora pertence a esse local.`,
  otherTube: (diameterMm, practiceDiameterMm) =>
    `O tubo de treino tem ${practiceDiameterMm}\u00a0mm de diâmetro, mas o tubo deste experimento tem ${diameterMm}\u00a0mm. Para treinar, comece um experimento novo em Arquivo.`,
};

export const guide: FirstWords['guide'] = {
  heading: 'Guia',
  count: (done, all) => `Guia, ${done} de ${all}:`,
  says: {
    listen: 'Toque em Ouvir e espere um momento.',
    strike: 'Bata no diapasão e segure-o na boca.',
    slide: 'Arraste a alça devagar até a outra ponta: cada piscada é uma marca.',
    slideAgain: 'Poucas ressonâncias: bata de novo e passe por elas mais devagar.',
    back: 'Volte como a figura mostra, até aparecer “Aqui”.',
    type: 'Leia o comprimento na lupa e digite-o acima do tubo.',
    rest: 'Volte do mesmo jeito à próxima marca; leia e digite o comprimento.',
    read: 'Toque em “Anotar estas leituras”, ao lado dos botões do diapasão.',
    faintSliding: 'O diapasão está fraco: bata de novo e continue deslizando.',
    faint: 'O diapasão está fraco: bata de novo. O caminho de volta continua valendo.',
  },
  done: 'Pronto: a velocidade está no alto da página. Mais marcas reduzem a incerteza.',
  showTruth: 'Mostrar os valores verdadeiros',
  hideTruth: 'Esconder os valores verdadeiros',
};
