import type { LaterWords } from '../../catalogue.ts';
import { megabytes } from '../../numbers.ts';
import { counted } from '../grammar.ts';

export const intakePage: LaterWords['intakePage'] = {
  heading: 'O que chegou',
  files: 'Arquivos',
  toClass: 'Levar para a tela Turma',
  add: 'Adicionar a este experimento',
  openOne: 'Abrir como experimento novo',
  openEach: 'Abrir cada um como experimento',
  listen: 'Ouvir as gravações',
  cancel: 'Cancelar',
  close: 'Fechar sem mudar nada',
  tooMany: (files, most) => `${files} arquivos de uma vez são demais: o máximo é ${most}.`,
  tooLarge: (mostBytes) => `Estes arquivos juntos passam de ${megabytes(mostBytes)}: abra-os em partes.`,
  opened: (title) =>
    `“${title}” está aberto. O que estava aberto antes está na lista em Arquivo, ou um passo atrás com “Desfazer”.`,
  leftClosed: (files) => `${files} arquivos não foram abertos.`,
};

export const intakeContent: LaterWords['intakeContent'] = {
  experiment: (title, marks) => `experimento “${title}”, ${counted(marks, 'marca', 'marcas')}`,
  table: (rows) => `tabela, ${counted(rows, 'linha', 'linhas')} de marcas`,
  results: (results) => `tabela, ${counted(results, 'resultado', 'resultados')}`,
  recording: 'gravação',
  whole: (content) => `${content}.`,
  inPart: (content, faults) => `${content}; ${counted(faults, 'erro', 'erros')}.`,
  unusable: 'não pode ser usado.',
  ask: (content) => `Usar só a parte sem erros: ${content}`,
  inRow: (row, message) => `linha ${row}: ${message}`,
  inField: (field, message) => `${field}: ${message}`,
  inRowAndField: (row, field, message) => `linha ${row}, ${field}: ${message}`,
  more: (faults) => `e mais ${faults}.`,
};

export const usableFiles: LaterWords['usableFiles'] = {
  all: (files) => `Todos os ${files} arquivos podem ser usados.`,
  some: (usable, files) =>
    `Arquivos que podem ser usados: ${usable} de ${files}. O que está errado vem primeiro.`,
  inPart: (usable, files, inPart) =>
    `Arquivos que podem ser usados: ${usable} de ${files}, ${inPart} deles em parte. O que está errado vem primeiro.`,
};

export const takenTable: LaterWords['takenTable'] = {
  opened: (title) =>
    `“${title}” está aberto como experimento novo. O que estava aberto antes está na lista em Arquivo.`,
  added: (marks) => `${counted(marks, 'marca adicionada', 'marcas adicionadas')}; “Desfazer” retira isso.`,
  leftOut: (rows, why) => `${counted(rows, 'linha não foi usada', 'linhas não foram usadas')}: ${why}`,
  nothing: (why) => `Nenhuma linha da tabela pôde ser usada. ${why}`,
  nothingOf: (title, why) => `Nenhuma linha de ${title} pôde ser usada. ${why}`,
  unknownRow: (message) => `linha ?: ${message}`,
};
