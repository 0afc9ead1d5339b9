import type { FirstWords } from '../catalogue.ts';

export const pageFault: FirstWords['pageFault'] = {
  action:
    'Algo ha fallado en la página: puede que lo último que hiciste no haya funcionado. Lo que escribiste antes sigue ahí. Reinténtalo; si vuelve a fallar, guarda el archivo JSON en Archivo y recarga la página.',
  follow:
    'Una parte de la página no muestra el último cambio, pero el cambio está hecho. «Deshacer» lo quita; al recargar la página se ve.',
  hearing: 'La escucha no pudo seguir el último cambio: párala y escucha otra vez.',
  view: 'No se pudo cargar esta vista: no hay red, o el sitio ha cambiado. Lo que escribiste sigue ahí; reinténtalo o recarga la página.',
};
