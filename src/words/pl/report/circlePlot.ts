import type { LaterWords } from '../../catalogue.ts';

export const circlePlot: LaterWords['circlePlot'] = {
  title: (name) => `Co słyszy mikrofon: ${name}`,
  example: 'przykład',
  x: 'w fazie z samym kamertonem (amplituda 1)',
  y: 'o ćwierć okresu wcześniej',
  silence: 'zero',
  direct: 'sam kamerton',
  resonance: 'rezonans',
  loudest: 'najgłośniej',
  tooShort: 'za krótki',
  tooLong: 'za długi',
  way: 'Okrąg biegnie od dźwięku samego kamertonu (kółko) przez rezonans naprzeciwko (romb) i z powrotem, od słupa za krótkiego o 6 połówek szerokości do za długiego o 6. Krzyżyki zaznaczają zero i miejsca o połowę szerokości w obie strony.',
  ahead: (times, degrees) =>
    `W rezonansie dźwięk słupa jest ${times} raza silniejszy od dźwięku kamertonu i wyprzedza go o ${degrees}°.`,
  behind: (times, degrees) =>
    `W rezonansie dźwięk słupa jest ${times} raza silniejszy od dźwięku kamertonu i opóźnia się względem niego o ${degrees}°.`,
  loudestTooLong: (halfWidths) =>
    `Linia przerywana prowadzi od zera do najgłośniejszego miejsca (kropka): słup jest tam za długi o ${halfWidths} połowy szerokości.`,
  loudestTooShort: (halfWidths) =>
    `Linia przerywana prowadzi od zera do najgłośniejszego miejsca (kropka): słup jest tam za krótki o ${halfWidths} połowy szerokości.`,
  loudestAlike:
    'Linia przerywana prowadzi od zera do najgłośniejszego miejsca (kropka), którym jest sam rezonans.',
};
