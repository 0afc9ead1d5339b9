import type { FirstWords } from '../../catalogue.ts';

export const keepingBar: FirstWords['keepingBar'] = {
  elsewhere: 'Este experimento está aberto em outra aba. Esta aba só o mostra e acompanha a outra.',
  workHere: 'Trabalhar nele aqui',
  openCopy: 'Abrir uma cópia',
  apart: 'Este experimento foi mudado em outra aba. O que você mudar aqui não será salvo.',
  goOn: 'Continuar com uma cópia',
  useOther: 'Usar o que a outra aba salvou',
  refused: (why) =>
    `Seu trabalho está só nesta aba: ${why} Você pode continuar. Salve o arquivo antes de sair.`,
  save: 'Salvar o arquivo',
  tryAgain: 'Tentar de novo',
  sound: (used, limit) => ({
    before: '',
    part: '● O som está sendo salvo',
    after: ` enquanto a página ouve: ${used} de ${limit}`,
  }),
  stopSaving: 'Parar de salvar o som',
  newer: 'Há uma versão mais nova desta página. Atualize quando quiser; suas medidas estão salvas.',
  newerBusy:
    'Há uma versão mais nova desta página. Feche antes as outras abas dela: elas ainda usam a antiga.',
  useNewer: 'Atualizar agora',
};
