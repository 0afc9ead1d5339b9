import type { FirstWords } from '../catalogue.ts';

export const tooLong: FirstWords['tooLong'] = {
  title: (length, longest) =>
    `Der Titel hat ${length} Zeichen; höchstens ${longest} sind möglich. Kürze ihn.`,
  place: (length, longest) =>
    `Der Name des Ortes hat ${length} Zeichen; höchstens ${longest} sind möglich. Kürze ihn.`,
  group: (length, longest) =>
    `Der Name der Gruppe hat ${length} Zeichen; höchstens ${longest} sind möglich. Kürze ihn.`,
  fork_id: (length, longest) =>
    `Der Name der Gabel hat ${length} Zeichen; höchstens ${longest} sind möglich. Kürze ihn.`,
  note: (length, longest) => `Die Notiz hat ${length} Zeichen; höchstens ${longest} sind möglich. Kürze sie.`,
};

export const keepingFault: FirstWords['keepingFault'] = {
  listFull: {
    marks: (most) =>
      `Ein Experiment fasst höchstens ${most} Marken. Beginn für mehr ein neues Experiment (Ablage).`,
    deletedMarks: (most) =>
      `Ein Experiment fasst höchstens ${most} gelöschte Marken. Hol einige zurück, oder beginn ein neues Experiment (Ablage).`,
    forks: (most) => `Ein Experiment fasst höchstens ${most} Gabeln. Entferne eine, die keine Marken hat.`,
    places: (most) => `Ein Experiment fasst höchstens ${most} Orte. Entferne einen, der keine Marken hat.`,
  },
  unreadable: (why) => `Das lässt sich nicht speichern: ${why}`,
  tooLarge: (megabytes, mostMegabytes) =>
    `Das Experiment hätte ${megabytes}\u00a0MB; seine Datei darf ${mostMegabytes}\u00a0MB haben. Beginn für mehr ein neues (Ablage), oder kürze die Notizen.`,
};

export const notLoaded: FirstWords['notLoaded'] = {
  missing: 'es ist nicht mehr da.',
  unreadable: (why) => `${why} In der Ablage lässt es sich unverändert speichern.`,
};
