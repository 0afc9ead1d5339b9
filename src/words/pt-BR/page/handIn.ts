import type { LaterWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const handIn: LaterWords['handIn'] = {
  heading: 'Entregar',
  lead: 'Mostra um código com as marcas que contam, a montagem e o nome do grupo. Seu professor o lê nesta tela com um celular, um tablet ou a tela Turma. Nada é enviado.',
  none: 'Nenhuma marca tem comprimento ainda.',
  unnamed: 'Seu grupo ainda não tem nome. Digite um em “Este experimento”.',
  show: 'Mostrar o código',
  hide: 'Esconder o código',
  codeName: 'o resultado deste grupo',
  holds: (group, marks) =>
    `${group}: ${counted(marks, 'marca', 'marcas')}. O código não contém anotações, nem som, nem outro nome além do nome do grupo.`,
  link: 'O mesmo como link',
};
