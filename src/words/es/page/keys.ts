import type { LaterWords } from '../../catalogue.ts';

export const keys: LaterWords['keys'] = {
  heading: 'Teclas',
  keys: [
    ['L', 'escuchar, o parar'],
    ['M', 'poner una marca y escribir después su longitud'],
    ['K', 'conservar lo que quizá sea una resonancia, primero la más reciente'],
    ['E', 'ir a la última marca sin longitud; si no hay ninguna, al campo que añade una marca'],
    ['Intro', 'usar la longitud escrita e ir a la marca siguiente'],
    ['Esc', 'salir de un campo, para que estas teclas vuelvan a funcionar'],
    ['S', 'práctica: golpear el diapasón'],
    ['F', 'práctica: llevar el diapasón a la boca, o apartarlo'],
    ['← →', 'cambiar la longitud 1\u00a0mm; mantén pulsada la tecla para seguir deslizando'],
    ['Mayús ← →', 'cambiar la longitud 0,2\u00a0mm'],
    ['Ctrl Z', 'deshacer'],
    ['Ctrl Y', 'rehacer'],
    ['?', 'mostrar estas teclas'],
  ],
  close: 'Cerrar',
};
