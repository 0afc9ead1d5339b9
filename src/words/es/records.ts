import type { FirstWords } from '../catalogue.ts';

export const tooLong: FirstWords['tooLong'] = {
  title: (length, longest) =>
    `El título tiene ${length} caracteres; se admiten ${longest} como máximo. Acórtalo.`,
  place: (length, longest) =>
    `El nombre del lugar tiene ${length} caracteres; se admiten ${longest} como máximo. Acórtalo.`,
  group: (length, longest) =>
    `El nombre del grupo tiene ${length} caracteres; se admiten ${longest} como máximo. Acórtalo.`,
  fork_id: (length, longest) =>
    `El nombre del diapasón tiene ${length} caracteres; se admiten ${longest} como máximo. Acórtalo.`,
  note: (length, longest) =>
    `La nota tiene ${length} caracteres; se admiten ${longest} como máximo. Acórtala.`,
};

export const keepingFault: FirstWords['keepingFault'] = {
  listFull: {
    marks: (most) =>
      `Un experimento tiene ${most} marcas como máximo. Empieza otro experimento para las demás (Archivo).`,
    deletedMarks: (most) =>
      `Un experimento tiene ${most} marcas borradas como máximo. Recupera algunas, o empieza otro experimento (Archivo).`,
    forks: (most) => `Un experimento tiene ${most} diapasones como máximo. Quita uno que no tenga marcas.`,
    places: (most) => `Un experimento tiene ${most} lugares como máximo. Quita uno que no tenga marcas.`,
  },
  unreadable: (why) => `Eso no se puede guardar: ${why}`,
  tooLarge: (megabytes, mostMegabytes) =>
    `El experimento tendría ${megabytes}\u00a0MB; su archivo puede tener ${mostMegabytes}\u00a0MB. Empieza otro para seguir (Archivo), o acorta las notas.`,
};

export const notLoaded: FirstWords['notLoaded'] = {
  missing: 'ya no está.',
  unreadable: (why) => `${why} En Archivo se puede guardar tal como está.`,
};
