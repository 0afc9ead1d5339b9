import type { LaterWords } from '../../catalogue.ts';

export const reportPage: LaterWords['reportPage'] = {
  name: 'Relatório',
  print: 'Imprimir ou salvar como PDF',
  save: 'Salvar como arquivo HTML',
  leaveWorking: 'Sem os cálculos, com espaço para calcular',
  back: 'Voltar a Arquivo',
  lines: 'Há linhas vazias para os nomes e a discussão.',
  pending: 'O relatório:',
};
