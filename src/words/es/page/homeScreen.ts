import type { LaterWords } from '../../catalogue.ts';

export const homeScreen: LaterWords['homeScreen'] = {
  advice:
    'En un iPhone o iPad, el navegador borra lo que ha guardado esta página si no la abres en siete días. Una aplicación de la pantalla de inicio no se borra así, pero su Archivo empieza vacío. Por eso, añade primero esta página a la pantalla de inicio (Compartir, Añadir a pantalla de inicio) y trabaja allí. Guarda el archivo de lo que hayas medido aquí.',
  save: 'Guardar el archivo',
  read: 'Lo he leído',
};
