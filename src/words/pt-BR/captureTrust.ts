import type { FirstWords } from '../catalogue.ts';

export const stepLabels: FirstWords['stepLabels'] = {
  autoGainControl: 'Ganho automático',
  noiseSuppression: 'Supressão de ruído',
  echoCancellation: 'Cancelamento de eco',
};

export const stepNames: FirstWords['stepNames'] = {
  autoGainControl: 'o ganho automático',
  noiseSuppression: 'a supressão de ruído',
  echoCancellation: 'o cancelamento de eco',
};

export const captureTrust: FirstWords['captureTrust'] = {
  nothingProcesses: 'Nada processa o som desta fonte.',
  processingOn: {
    marks: (steps) =>
      `Este navegador continua aplicando ${steps}, o que pode mudar o nível. As ressonâncias recebem marca mesmo assim, cada uma com esta dúvida: os comprimentos valem, o aumento em dB pode estar errado. Escolha outro microfone ou outro navegador, desligue os modos de voz nas configurações de som do sistema, ou grave com qualquer gravador e abra o arquivo aqui.`,
    sweep: (steps) =>
      `Este navegador continua aplicando ${steps}, o que pode mudar o nível. Os picos abaixo podem estar deslocados ou faltar. Escolha outro microfone ou outro navegador, ou desligue os modos de voz nas configurações de som do sistema.`,
  },
  checkFailed: {
    marks:
      'O teste de ganho mostrou que algo muda o nível. As ressonâncias recebem marca mesmo assim, cada uma com esta dúvida: os comprimentos valem, o aumento em dB pode estar errado. Desligue os modos de voz nas configurações de som do sistema ou escolha outro microfone, e repita o teste.',
    sweep:
      'O teste de ganho mostrou que algo muda o nível. Os picos abaixo podem estar deslocados ou faltar. Desligue os modos de voz nas configurações de som do sistema ou escolha outro microfone, e repita o teste.',
  },
  checkPassed: 'Este microfone passou no teste de ganho.',
  soundsProcessed: {
    marks:
      'O som parece processado, embora o navegador diga que não. As ressonâncias recebem marca mesmo assim, cada uma com esta dúvida: os comprimentos valem, o aumento em dB pode estar errado. Faça o teste de ganho: se ele passar, as novas marcas ficam livres da dúvida.',
    sweep:
      'O som parece processado, embora o navegador diga que não. Os picos abaixo podem estar deslocados ou faltar. Faça o teste de ganho: se ele passar, repita a varredura.',
  },
  processingOff: 'O navegador não processa o som.',
  processingUnsaid: (steps) =>
    `Este navegador não diz se desligou ${steps}. Faça o teste de ganho antes de confiar em um nível.`,
};

export const markDoubt: FirstWords['markDoubt'] = {
  inDoubt: (reasons) => `Em dúvida: ${reasons}`,
  reasons: {
    'processing-on': 'o navegador processava o som, então o aumento em dB pode estar errado',
    'gain-check-failed': 'o teste de ganho tinha falhado, então o aumento em dB pode estar errado',
    'sounds-processed': 'o som parecia processado, então o aumento em dB pode estar errado',
    suppressed: 'o som foi cortado nela, então talvez não seja uma ressonância',
  },
};
