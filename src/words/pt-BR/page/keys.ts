import type { LaterWords } from '../../catalogue.ts';

export const keys: LaterWords['keys'] = {
  heading: 'Teclas',
  keys: [
    ['L', 'ouvir, ou parar'],
    ['M', 'fazer uma marca, para digitar o comprimento depois'],
    ['K', 'ficar com o que talvez seja uma ressonância, começando pela mais nova'],
    ['E', 'ir à marca mais nova sem comprimento; se não houver nenhuma, ao campo que adiciona uma marca'],
    ['Enter', 'usar o comprimento digitado e ir à próxima marca'],
    ['Esc', 'sair de um campo, para que estas teclas voltem a funcionar'],
    ['S', 'treino: bater no diapasão'],
    ['F', 'treino: levar o diapasão à boca, ou para longe dela'],
    ['← →', 'mudar o comprimento em 1\u00a0mm; segure a tecla para continuar deslizando'],
    ['Shift ← →', 'mudar o comprimento em 0,2\u00a0mm'],
    ['Ctrl Z', 'desfazer'],
    ['Ctrl Y', 'refazer'],
    ['?', 'mostrar estas teclas'],
  ],
  close: 'Fechar',
};
