import type { FirstWords } from '../catalogue.ts';

export const storageFault: FirstWords['storageFault'] = {
  elsewhere: 'Enquanto isso, outra aba salvou este experimento.',
  full: 'O espaço que este navegador dá à página está cheio. Apague sons salvos (em Arquivo) ou libere espaço e tente de novo.',
  closed: 'O navegador fechou o armazenamento desta página. Tente de novo.',
  gone: {
    'another tab': 'Outra aba fechou ou apagou o que esta página tinha salvo.',
    'the browser': 'O navegador fechou ou apagou o que esta página tinha salvo.',
    'this tab': 'Esta aba fechou ou apagou o que esta página tinha salvo.',
  },
  refused: 'Este navegador não deixa a página salvar nada: uma janela anônima ou uma configuração impede.',
  newer: 'Uma versão mais nova desta página salvou aqui. Feche todas as abas dela e abra-a de novo.',
  page: 'A própria página falhou enquanto salvava.',
  unknown: (said) => `O armazenamento do navegador falhou (${said}).`,
};
