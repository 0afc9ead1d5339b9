import type { FirstWords } from '../catalogue.ts';

export const tooLong: FirstWords['tooLong'] = {
  title: (length, longest) => `O título tem ${length} caracteres; o máximo é ${longest}. Encurte-o.`,
  place: (length, longest) => `O nome do local tem ${length} caracteres; o máximo é ${longest}. Encurte-o.`,
  group: (length, longest) => `O nome do grupo tem ${length} caracteres; o máximo é ${longest}. Encurte-o.`,
  fork_id: (length, longest) =>
    `O nome do diapasão tem ${length} caracteres; o máximo é ${longest}. Encurte-o.`,
  note: (length, longest) => `A nota tem ${length} caracteres; o máximo é ${longest}. Encurte-a.`,
};

export const keepingFault: FirstWords['keepingFault'] = {
  listFull: {
    marks: (most) =>
      `Um experimento tem no máximo ${most} marcas. Comece outro experimento para as demais (Arquivo).`,
    deletedMarks: (most) =>
      `Um experimento tem no máximo ${most} marcas apagadas. Recupere algumas, ou comece outro experimento (Arquivo).`,
    forks: (most) => `Um experimento tem no máximo ${most} diapasões. Remova um que não tenha marcas.`,
    places: (most) => `Um experimento tem no máximo ${most} locais. Remova um que não tenha marcas.`,
  },
  unreadable: (why) => `Isso não pode ser salvo: ${why}`,
  tooLarge: (megabytes, mostMegabytes) =>
    `O experimento teria ${megabytes}\u00a0MB; o arquivo dele pode ter ${mostMegabytes}\u00a0MB. Comece outro para continuar (Arquivo), ou encurte as anotações.`,
};

export const notLoaded: FirstWords['notLoaded'] = {
  missing: 'ele não está mais lá.',
  unreadable: (why) => `${why} Em Arquivo ele pode ser salvo como está.`,
};
