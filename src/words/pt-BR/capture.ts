import type { FirstWords } from '../catalogue.ts';

export const waitsFor: FirstWords['waitsFor'] = {
  permission:
    'O navegador pergunta se esta página pode usar o microfone: olhe perto do endereço e escolha “Permitir”.',
};

export const hold: FirstWords['hold'] = {
  muted: 'O microfone está mudo, por um botão ou pelo sistema. Ative-o: a escuta continua sozinha.',
  suspended:
    'O navegador pausou o som (uma ligação, uma página escondida, repouso). Volte à página ou comece de novo.',
  frozen: 'Há dois segundos não chega som do microfone. Se não voltar, comece de novo.',
};

export const noSound: FirstWords['noSound'] =
  'Não chega nenhum som do microfone. Procure nele um botão de mudo, ou escolha outro em Verificar.';

export const captureFailure: FirstWords['captureFailure'] = {
  withoutMicrophone: (advice) =>
    `${advice} Todo o resto funciona sem ele: digite comprimentos à mão, abra uma gravação ou use a coluna de treino.`,
  'recording-broken': {
    what: 'Não foi possível analisar a gravação até o fim.',
    advice: 'Abra-a outra vez; se não adiantar, salve-a como WAV e abra esse arquivo.',
  },
  'listening-broken': {
    what: 'A página não conseguiu começar a ouvir, ou parou no meio.',
    advice: 'Comece de novo; se não adiantar, confira a conexão e recarregue a página.',
  },
  'audio-broken': {
    what: 'O áudio do navegador parou de funcionar.',
    advice:
      'O que já foi encontrado fica guardado. Comece de novo; se acontecer outra vez, recarregue a página.',
  },
  'insecure-context': {
    what: 'O navegador só dá o microfone a páginas com endereço seguro.',
    advice: 'Abra esta página com https:// (ou em localhost).',
  },
  framed: {
    what: 'Esta página está dentro de outra, que não lhe dá o microfone.',
    advice: 'Abra-a em uma aba própria e comece de novo.',
  },
  'permission-withdrawn': {
    what: 'A permissão para o microfone foi retirada.',
    advice:
      'O que já foi encontrado fica guardado. Toque no ícone ao lado do endereço, permita o microfone outra vez e comece de novo.',
  },
  'microphone-busy': {
    what: 'Não é possível abrir o microfone: outro programa ou outra aba talvez o esteja usando.',
    advice: 'Feche-o (uma ligação, um gravador) e comece de novo.',
  },
  'microphone-lost': {
    what: 'O microfone foi desconectado ou desligado.',
    advice: 'O que já foi encontrado fica guardado. Conecte-o e comece de novo.',
  },
  'uneven-sound': {
    what: 'O som chega mais rápido ou mais devagar do que o navegador informa, ou o computador não dá conta: tempos e frequências ficariam errados.',
    advice:
      'O que já foi encontrado fica guardado. Feche outros programas, desconecte e conecte o microfone e comece de novo.',
  },
  closed: {
    what: 'A pergunta sobre o microfone foi fechada sem resposta.',
    advice: 'Comece de novo e escolha “Permitir”.',
  },
  refused: {
    what: 'O microfone foi recusado.',
    advice:
      'Toque no ícone ao lado do endereço, permita o microfone para esta página e comece de novo. Se não houver nada para permitir, o administrador da escola o desativou.',
  },
  system: {
    what: 'As configurações de privacidade do computador não dão o microfone ao navegador.',
    advice: 'Permita-o lá (privacidade, microfone) e comece de novo.',
  },
  policy: {
    what: 'Uma regra deste site ou da escola não dá o microfone às páginas.',
    advice: 'Peça ao administrador que o permita.',
  },
  'none-given': {
    what: 'Este navegador não deixa páginas da web usarem um microfone.',
    advice: 'Use uma versão atual do Chrome, Edge, Firefox ou Safari.',
  },
  'none-found': {
    what: 'Nenhum microfone foi encontrado.',
    advice: 'Conecte ou ligue um e comece de novo.',
  },
  'not-there': {
    what: 'O microfone escolhido não está mais lá.',
    advice: 'Escolha outro e comece de novo.',
  },
};
