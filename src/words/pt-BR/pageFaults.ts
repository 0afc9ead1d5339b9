import type { FirstWords } from '../catalogue.ts';

export const pageFault: FirstWords['pageFault'] = {
  action:
    'Algo falhou na página: o que você acabou de fazer pode não ter funcionado. O que você digitou antes continua lá. Tente de novo; se falhar outra vez, salve o arquivo JSON em Arquivo e recarregue a página.',
  follow:
    'Uma parte da página não mostra a última mudança, mas a mudança foi feita. “Desfazer” a retira; ao recarregar a página ela aparece.',
  hearing: 'A escuta não acompanhou a última mudança: pare e ouça de novo.',
  view: 'Esta tela não pôde ser carregada: não há rede, ou o site mudou. O que você digitou continua lá; tente de novo ou recarregue a página.',
};
