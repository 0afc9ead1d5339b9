import type { LaterWords } from '../../catalogue.ts';

export const lesson: LaterWords['lesson'] = {
  heading: 'Enlace de la clase',
  lead: 'Para profesores: un enlace para la clase con los diapasones, el tubo, la regla, los lugares y la columna tal como están ahora. No contiene marcas ni nombres.',
  task: 'Qué hay que medir',
  language: 'Idioma de la tarea (es, en, fr …)',
  hideExpected: 'Ocultar dónde se esperan resonancias',
  hideTheory: 'Ocultar la velocidad prevista',
  hideTruth: 'Ocultar los valores verdaderos (práctica)',
  apart:
    'Las dos últimas opciones son independientes. Si solo ocultas la velocidad prevista, «Mostrar los valores verdaderos» sigue dando la velocidad del sonido a quien practica. Marca las dos para ocultarla en todas partes.',
  limits:
    'Lo que no se puede ocultar: lo que los alumnos calculan o buscan por su cuenta, esta página abierta sin el enlace y el código fuente del programa. Ocultar solo quita la respuesta de la vista; no la protege.',
  make: 'Crear el enlace',
  link: 'Enlace',
  copy: 'Copiar el enlace',
  code: 'Mostrarlo como código QR',
  codeName: 'la clase',
  tooLongForCode: 'El enlace es demasiado largo para un código QR. Acorta la tarea o envía el enlace.',
  reveal: 'Cuando sea el momento, mostrar a la clase lo que estaba oculto',
  revealCode: 'Código para decir en voz alta; los alumnos lo escriben en Archivo',
  revealLink: 'Enlace que hace lo mismo',
  copyReveal: 'Copiar el enlace que lo muestra',
  showRevealCode: 'Mostrar ese enlace como código QR',
  revealName: 'lo que oculta la clase',
  copied: 'El enlace se ha copiado.',
  notCopied: 'El navegador no ha permitido copiar. Selecciona el enlace y cópialo a mano.',
};

export const keptBack: LaterWords['keptBack'] = {
  heading: 'Lo que oculta esta clase',
  until: (list) => `Oculto hasta que tu profesor lo muestre: ${list}.`,
  expected: 'dónde se esperan resonancias',
  theory: 'la velocidad del sonido prevista',
  truth: 'los valores verdaderos de la columna de práctica',
  code: 'Código del profesor',
  show: 'Mostrar',
  noCode: 'Esta clase no tiene ningún código que lo muestre.',
};
