import type { LaterWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const classPage: LaterWords['classPage'] = {
  heading: 'Turma',
  lead: 'Solte aqui os arquivos dos grupos (JSON ou CSV, quantos quiser) ou cole uma tabela: de marcas, com uma coluna group, ou de resultados, com as colunas group, speed_mps e standard_uncertainty_mps. Ou leia os códigos nas telas dos grupos. Tudo fica neste aparelho até você esvaziar a tela Turma. Nada é enviado.',
  back: 'Voltar a Arquivo',
  print: 'Imprimir o resumo',
  saveCsv: 'Salvar turma como CSV',
  saveJson: 'Salvar turma como JSON',
  copy: 'Copiar tabela',
  copied: 'A tabela da turma foi copiada, pronta para colar.',
  empty: 'Esvaziar a tela Turma',
  discuss: 'Para discutir',
  groups: 'Grupos',
  table: 'Tabela dos grupos',
  use: 'Contar',
  group: 'Grupo',
  speed: 'm/s (95\u00a0%)',
  marks: 'Marcas',
  remarks: 'Observações',
  groupInFile: (name, fileName) => `${name}, ${fileName}`,
  count: (group) => `Contar ${group}`,
};

export const codeTaken: LaterWords['codeTaken'] = {
  notACode: 'Este código não contém o resultado de um grupo.',
  part: (have, of) => `Códigos lidos deste grupo: ${have} de ${of}. Mostre o próximo.`,
  new: (group) => `Adicionado: “${group}”.`,
  there: (group) => `Já está aqui, sem mudança: “${group}”.`,
  newer: (group) => `Já está aqui: “${group}”. Esta versão é mais nova e conta no lugar da outra.`,
  older: (group) => `Já está aqui: “${group}”. Esta versão não é mais nova e não conta.`,
  inTable: (rows) => `A tabela dos grupos tem ${counted(rows, 'linha', 'linhas')}.`,
};

export const camera: LaterWords['camera'] = {
  start: 'Ler códigos com a câmera',
  stop: 'Parar a câmera',
  lead: 'Segure o código de um grupo diante da câmera. As imagens não são salvas.',
  none: 'Este navegador não dá uma câmera à página. Leia o código com um celular ou tablet, ou abra aqui o link do grupo.',
  refused:
    'Esta página não tem permissão para usar a câmera. Permita ao lado do endereço, ou abra aqui o link do grupo.',
  busy: 'A câmera não liga. Talvez outro programa a esteja usando.',
  picture: 'O que a câmera vê',
};
