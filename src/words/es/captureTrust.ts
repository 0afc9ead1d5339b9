import type { FirstWords } from '../catalogue.ts';

export const stepLabels: FirstWords['stepLabels'] = {
  autoGainControl: 'Ganancia automática',
  noiseSuppression: 'Supresión de ruido',
  echoCancellation: 'Cancelación de eco',
};

export const stepNames: FirstWords['stepNames'] = {
  autoGainControl: 'la ganancia automática',
  noiseSuppression: 'la supresión de ruido',
  echoCancellation: 'la cancelación de eco',
};

export const captureTrust: FirstWords['captureTrust'] = {
  nothingProcesses: 'Nada procesa esta fuente.',
  processingOn: {
    marks: (steps) =>
      `Este navegador sigue aplicando ${steps}, lo que puede cambiar el nivel. Las resonancias reciben marca de todos modos, cada una con esta duda: sus longitudes valen, su subida en dB puede ser falsa. Elige otro micrófono u otro navegador, desactiva los modos de voz en los ajustes de sonido del sistema, o graba con cualquier grabadora y abre aquí el archivo.`,
    sweep: (steps) =>
      `Este navegador sigue aplicando ${steps}, lo que puede cambiar el nivel. Los máximos de abajo pueden estar desplazados o faltar. Elige otro micrófono u otro navegador, o desactiva los modos de voz en los ajustes de sonido del sistema.`,
  },
  checkFailed: {
    marks:
      'El control de ganancia ha visto que algo cambia el nivel. Las resonancias reciben marca de todos modos, cada una con esta duda: sus longitudes valen, su subida en dB puede ser falsa. Desactiva los modos de voz en los ajustes de sonido del sistema o elige otro micrófono, y repite el control.',
    sweep:
      'El control de ganancia ha visto que algo cambia el nivel. Los máximos de abajo pueden estar desplazados o faltar. Desactiva los modos de voz en los ajustes de sonido del sistema o elige otro micrófono, y repite el control.',
  },
  checkPassed: 'El control de ganancia con este micrófono está superado.',
  soundsProcessed: {
    marks:
      'El sonido parece procesado, aunque el navegador dice que no. Las resonancias reciben marca de todos modos, cada una con esta duda: sus longitudes valen, su subida en dB puede ser falsa. Haz el control de ganancia: si se supera, las marcas nuevas quedan libres de la duda.',
    sweep:
      'El sonido parece procesado, aunque el navegador dice que no. Los máximos de abajo pueden estar desplazados o faltar. Haz el control de ganancia: si se supera, repite el barrido.',
  },
  processingOff: 'El navegador no procesa el sonido.',
  processingUnsaid: (steps) =>
    `Este navegador no dice si ha desactivado ${steps}. Haz el control de ganancia antes de fiarte de un nivel.`,
};

export const markDoubt: FirstWords['markDoubt'] = {
  inDoubt: (reasons) => `En duda: ${reasons}`,
  reasons: {
    'processing-on': 'el navegador procesaba el sonido, así que la subida en dB puede ser falsa',
    'gain-check-failed':
      'el control de ganancia no se había superado, así que la subida en dB puede ser falsa',
    'sounds-processed': 'el sonido parecía procesado, así que la subida en dB puede ser falsa',
    suppressed: 'el sonido se cortó en ella, así que quizá no sea una resonancia',
  },
};
