import type { FirstWords } from '../catalogue.ts';
import { counted, plural } from './grammar.ts';

/** "1 ressonância encontrada", "2 ressonâncias encontradas". */
const found = (resonances: number): string =>
  counted(resonances, 'ressonância encontrada', 'ressonâncias encontradas');

export const notice: FirstWords['notice'] = {
  undone: (step) => `Desfeito: ${step}.`,
  redone: (step) => `Refeito: ${step}.`,
  markDeleted: 'Marca apagada. Você pode recuperá-la abaixo da lista.',
  resonanceFound: (waiting) =>
    waiting === 1
      ? 'Ressonância encontrada: digite o comprimento.'
      : `Ressonância encontrada: ${waiting} comprimentos a digitar.`,
  resonanceMaybe: (percent) =>
    `Talvez uma ressonância, ${percent}\u00a0% de certeza. Deslize por ela de novo, ou aperte K para ficar com ela se você também a ouviu.`,
  resonanceAgain: (mark) => `A mesma ressonância de novo: contada com a marca ${mark}.`,
  resonanceJoined: (mark) =>
    `Ressonância encontrada: unida à marca ${mark}. Se for outra ressonância, escolha “Separar” na lista de marcas.`,
  notMarked:
    'Uma ressonância foi ouvida, mas não marcada: o som falhou nela. Você ainda pode marcá-la, abaixo de “Dá para confiar no nível?”.',
  gainCheckPassed:
    'Teste de ganho: sem mudança. O som do diapasão foi sumindo de modo regular enquanto se falava. Salvo com o experimento.',
  gainCheckFailed:
    'Teste de ganho: com mudança. Algo muda o nível. Até isso ser resolvido, as marcas novas ficam em dúvida.',
  noneInRecording: 'Nenhuma ressonância foi encontrada nesta gravação.',
  foundInRecording: (resonances) => `${found(resonances)} na gravação.`,
  foundToType: (resonances) => `${found(resonances)} na gravação. Digite os comprimentos.`,
  maybesInRecording: (resonances, maybes) =>
    `${found(resonances)} na gravação, e mais ${maybes} que talvez ${plural(maybes, 'seja', 'sejam')}.`,
  maybesToType: (resonances, maybes) =>
    `${found(resonances)} na gravação, e mais ${maybes} que talvez ${plural(maybes, 'seja', 'sejam')}. Digite os comprimentos.`,
  onlyMaybes: (maybes) =>
    maybes === 1
      ? 'Nada na gravação é com certeza uma ressonância, mas 1 ponto talvez seja.'
      : `Nada na gravação é com certeza uma ressonância, mas ${maybes} pontos talvez sejam.`,
  recordingHeardAgain: 'A gravação está sendo analisada de novo, desde o começo, com este diapasão.',
  strikeVoid: 'Essa batida foi interrompida e não conta: bata no diapasão de novo.',
  openElsewhere:
    'Este experimento está aberto em outra aba. Trabalhe nele aqui ou abra uma cópia: os botões estão no alto da página.',
  busyElsewhere: 'Este experimento está aberto em outra aba: feche-o lá primeiro.',
  takenElsewhere: 'Agora você trabalha neste experimento em outra aba. Esta aba só o mostra.',
  storeErased:
    'Tudo o que estava salvo neste navegador foi apagado. O experimento aberto foi salvo de novo. Os outros experimentos e os sons salvos não estão mais neste aparelho.',
  lastUnreadable: (why) =>
    `O último experimento não pôde ser lido: ${why} Ele está salvo como está, em Arquivo.`,
  changesNotSaved: (title, why) => `As últimas mudanças de “${title}” não foram salvas: ${why}`,
  notOpened: (why) => `Este experimento não pode ser aberto: ${why}`,
  notDuplicated: (why) => `Este experimento não pode ser copiado: ${why}`,
  copyOpen: (title) => `Agora você trabalha em “${title}”. O original fica na lista.`,
  lessonOpen: 'A aula está preparada. Seu experimento de antes está salvo na lista em Arquivo.',
  lessonAgain:
    'Você já tinha começado esta aula aqui: ela está aberta como você a deixou. Para outro grupo, escolha “Novo, mesma montagem” em Arquivo.',
  lessonWithout: (forks, lowestHz, highestHz) =>
    `A aula está preparada, mas sem estes diapasões: ${forks}. Esta página ouve diapasões de ${lowestHz} a ${highestHz}\u00a0Hz.`,
  lessonRevealed: (experiments) =>
    experiments === 1
      ? '1 experimento desta aula agora mostra tudo.'
      : `${experiments} experimentos desta aula agora mostram tudo.`,
  noSuchCode:
    'Este código não abre nenhuma aula neste aparelho. Digite-o exatamente como seu professor passou.',
  experimentDeleted: 'Experimento apagado. Você pode recuperá-lo abaixo da lista.',
  soundNowhere: 'O som não pode ser salvo: agora este navegador não salva nada para esta página.',
  soundLimit:
    'Não há espaço para mais som: ele deixou de ser salvo. Salve alguns sons como arquivos e apague-os aqui (Arquivo).',
  soundStopped: (why) => `O som deixou de ser salvo. ${why}`,
};
