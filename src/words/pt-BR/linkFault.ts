import type { FirstWords } from '../catalogue.ts';

export const linkFault: FirstWords['linkFault'] = {
  damaged: 'Este link está danificado. Peça-o de novo e copie-o inteiro.',
  newer:
    'Este link foi feito por uma versão mais nova desta página. Recarregue a página com internet e abra o link de novo.',
  noInflate:
    'Este navegador é antigo demais para ler o link. Use Firefox 113, Safari 16.4, Chrome 80 ou mais novo.',
  record: (why) => `Este link da aula não pode ser usado: ${why} Peça ao seu professor que faça um novo.`,
};
