import type { FirstWords } from '../catalogue.ts';

export const storageFault: FirstWords['storageFault'] = {
  elsewhere: 'Mientras tanto, otra pestaña ha guardado este experimento.',
  full: 'El espacio que este navegador da a la página está lleno. Borra sonido guardado (en Archivo) o libera espacio, y reinténtalo.',
  closed: 'El navegador ha cerrado el almacenamiento de esta página. Reinténtalo.',
  gone: {
    'another tab': 'Otra pestaña ha cerrado o borrado lo que esta página había guardado.',
    'the browser': 'El navegador ha cerrado o borrado lo que esta página había guardado.',
    'this tab': 'Esta pestaña ha cerrado o borrado lo que esta página había guardado.',
  },
  refused: 'Este navegador no deja que la página guarde nada: lo impide una ventana privada o un ajuste.',
  newer:
    'Una versión más nueva de esta página ha guardado aquí. Cierra todas sus pestañas y ábrela de nuevo.',
  page: 'La página misma ha fallado mientras guardaba.',
  unknown: (said) => `El almacenamiento del navegador ha fallado (${said}).`,
};
