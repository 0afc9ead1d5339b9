import type { FirstWords } from '../../catalogue.ts';
import { counted, plural } from '../grammar.ts';

export const frame: FirstWords['frame'] = {
  heading: 'Bancada de coluna de ar',
  views: 'Telas',
  viewNames: {
    measure: 'Medir',
    apparatus: 'Montagem',
    check: 'Verificar',
    working: 'Cálculos',
    compare: 'Comparar',
    records: 'Arquivo',
  },
  keys: 'Teclas',
  language: 'Idioma',
  languageNotLoaded:
    'Este idioma não pôde ser carregado, e a página fica com o atual. Tente de novo quando houver internet.',
  theme: 'Tema',
  themeNames: { system: 'auto', light: 'claro', dark: 'escuro' },
  drop: 'Solte para abrir',
  groupsTaken: (count) => `${counted(count, 'grupo adicionado', 'grupos adicionados')} à tela Turma.`,
  close: 'Fechar',
  doubts: (count) => counted(count, 'aviso', 'avisos'),
  lengthsToType: (count) => `Digite ${plural(count, 'um comprimento', `${count} comprimentos`)}`,
  saved: { nothing: '', saved: 'Salvo', saving: 'Salvando…', refused: 'Não salvo neste aparelho' },
};

export const failed: FirstWords['failed'] = {
  heading: (part) =>
    part === null ? 'Esta parte da página falhou.' : `Esta parte da página falhou: ${part}.`,
  detail:
    'Todo o resto ainda funciona. Tente de novo. Se falhou logo depois do seu último passo, desfaça esse passo. O arquivo do experimento pode ser salvo em todo caso.',
  again: 'Tentar de novo',
  undo: 'Desfazer o último passo',
  save: 'Salvar o arquivo do experimento',
};
