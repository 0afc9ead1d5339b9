import type { LaterWords } from '../../catalogue.ts';

export const homeScreen: LaterWords['homeScreen'] = {
  advice:
    'Em um iPhone ou iPad, o navegador apaga o que esta página salvou se você não a abrir por sete dias. Um app na tela de início não é apagado assim, mas nele o Arquivo começa vazio. Por isso, adicione primeiro esta página à tela de início (Compartilhar, Adicionar à Tela de Início) e trabalhe lá. Salve o arquivo do que você já mediu aqui.',
  save: 'Salvar o arquivo',
  read: 'Li isto',
};
