import type { LaterWords } from '../../catalogue.ts';
import { counted, plural } from '../grammar.ts';
import { fixed, megabytes } from '../../numbers.ts';

export const records: LaterWords['records'] = {
  bringIn: 'Importar',
  bringInLead: 'Ou solte arquivos em qualquer lugar da página, ou cole uma tabela fora dos campos.',
  toClass: { before: 'Arquivos de muitos grupos: ', part: 'abrir a tela Turma', after: '' },
  report: 'Relatório',
  reportLead:
    'Montagem, método, marcas, gráficos, cálculos, balanço, resultado e comparação em poucas páginas, com espaço para nomes e discussão.',
  openReport: 'Abrir o relatório',
};

export const experiments: LaterWords['experiments'] = {
  heading: 'Experimentos',
  newSame: 'Novo, mesma montagem',
  newPlain: 'Novo do zero',
  noList: (why) => `A lista não pode ser lida agora: ${why}`,
  none: 'Nada foi salvo ainda. A primeira mudança cria o primeiro registro.',
  deleted: (count) => `Experimentos apagados (${count})`,
  newTitle: 'Novo título',
  leaveTitle: 'Cancelar',
  open: 'Abrir',
  openNamed: (title) => `Abrir ${title}`,
  rename: 'Renomear',
  renameNamed: (title) => `Renomear ${title}`,
  duplicate: 'Duplicar',
  duplicateNamed: (title) => `Duplicar ${title}`,
  delete: 'Apagar',
  deleteNamed: (title) => `Apagar ${title}`,
  bringBack: 'Recuperar',
  bringBackNamed: (title) => `Recuperar ${title}`,
  erase: 'Apagar de vez…',
  eraseNamed: (title) => `Apagar ${title} de vez`,
  askErase: (title) => ({
    heading: `Apagar “${title}” de vez?`,
    message:
      'As marcas, curvas de nível, anotações, passos para desfazer e sons salvos são apagados deste navegador e não voltam mais.',
    no: 'Manter',
    yes: 'Apagar',
  }),
  counts: (marks, places) => `${counted(marks, 'marca', 'marcas')}, ${counted(places, 'local', 'locais')}`,
  openNow: 'aberto agora',
  unreadable: 'Um registro que não pode ser lido',
  saveUnreadable: 'Salvar como está',
  noFile: 'Este registro não pode ser salvo como arquivo. Ele fica como está.',
  notDone: (why) => `Não funcionou; nada foi mudado. ${why}`,
};

export const files: LaterWords['files'] = {
  heading: 'Este experimento',
  title: 'Título',
  group: 'Grupo',
  className: 'Turma',
  note: 'Anotações',
  saved: 'Salvo neste aparelho enquanto você trabalha. O som e as marcas nunca saem dele sozinhos.',
  notSaved: (why) => `Não foi salvo neste aparelho (${why}). Salve o arquivo JSON antes de sair.`,
  save: 'Salvar tudo como JSON',
  form: {
    before: 'O arquivo JSON contém tudo; seu formato está descrito em um ',
    part: 'esquema JSON',
    after: '.',
  },
};

export const tables: LaterWords['tables'] = {
  heading: 'Tabelas',
  form: 'CSV para uma planilha que lê',
  forms: {
    point: '15.8 (vírgula entre células)',
    comma: '15,8 (ponto e vírgula entre células)',
  },
  lead: 'Para planilhas e documentos, com todos os algarismos e as unidades nos títulos. O desvio do zero da régua já foi subtraído dos comprimentos.',
  csv: 'CSV',
  copy: 'Copiar',
  copied: (name, rows) =>
    `${name}: ${counted(rows, 'linha copiada, pronta', 'linhas copiadas, prontas')} para colar.`,
};

export const tableKinds: LaterWords['tableKinds'] = {
  marks: { name: 'Marcas', save: 'Salvar marcas como CSV', copy: 'Copiar marcas como tabela' },
  fit: {
    name: 'Ajuste, marca por marca',
    save: 'Salvar ajuste, marca por marca como CSV',
    copy: 'Copiar ajuste, marca por marca como tabela',
  },
  result: {
    name: 'Resultado',
    save: 'Salvar resultado como CSV',
    copy: 'Copiar resultado como tabela',
  },
  budget: {
    name: 'Balanço de incertezas',
    save: 'Salvar balanço de incertezas como CSV',
    copy: 'Copiar balanço de incertezas como tabela',
  },
  trace: {
    name: 'Nível em torno das marcas',
    save: 'Salvar nível em torno das marcas como CSV',
    copy: 'Copiar nível em torno das marcas como tabela',
  },
};

export const sounds: LaterWords['sounds'] = {
  heading: 'Som salvo',
  keep: 'Salvar o som de cada batida a partir de agora',
  lead: (usedBytes, limitBytes) =>
    `Desligado sempre que a página é aberta, porque as vozes da sala também são gravadas. O som fica neste aparelho. Todos os experimentos usam ${megabytes(usedBytes)} de ${megabytes(limitBytes)}.`,
  again:
    '“Ouvir de novo” analisa um som com o diapasão escolhido agora e substitui as marcas encontradas nele. Desfazer traz as antigas de volta.',
  marks: (count, numbers) => `${plural(count, 'marca', 'marcas')} ${numbers}`,
  save: 'Salvar como WAV',
  saveNamed: (number) => `Salvar o som ${number} como WAV`,
  listen: 'Ouvir de novo',
  listenNamed: (number) => `Ouvir de novo o som ${number}`,
  erase: 'Apagar…',
  eraseNamed: (number) => `Apagar o som ${number}`,
  askErase: (number, lengthS) => ({
    heading: `Apagar o som ${number}?`,
    message: `${fixed(lengthS, 1)}\u00a0s de som são apagados deste navegador e não voltam mais. As marcas ficam. Salve antes como WAV se ainda precisar dele.`,
    no: 'Manter',
    yes: 'Apagar',
  }),
  notRead: (why) => `Este som não pode ser lido: ${why}`,
  notErased: (why) => `Este som não pode ser apagado: ${why}`,
};

export const stored: LaterWords['stored'] = {
  heading: 'Salvo neste aparelho',
  lead: 'Experimentos com marcas, curvas de nível, anotações e passos para desfazer; som só onde você pediu; suas configurações; o que você digitou e ainda não confirmou; e uma cópia deste site, para que funcione sem internet. Tudo fica neste navegador: nada é enviado.',
  inAll: (bytes) => `${megabytes(bytes)} ao todo, segundo o navegador.`,
  promised: 'O navegador prometeu manter tudo até você apagar.',
  notPromised: 'O navegador pode apagar tudo se faltar espaço ou se esta página ficar muito tempo sem uso.',
  askToKeep: 'Pedir ao navegador que mantenha tudo',
  kept: 'O navegador mantém seus experimentos até você apagá-los.',
  notKept:
    'O navegador não aceitou manter seus dados. Salve em arquivos o que for importante; instalar esta página pode ajudar.',
  erase: 'Apagar tudo…',
  askErase: {
    heading: 'Apagar tudo o que está salvo aqui?',
    message:
      'Todos os experimentos, também os apagados, e todo o som salvo são apagados deste navegador e não voltam mais. Salve antes em arquivos o que ainda precisar.',
    no: 'Manter tudo',
    yes: 'Apagar tudo',
  },
  notErased: (why) => `Nem tudo pôde ser apagado: ${why}`,
  older:
    'Outra cópia desta página neste mesmo site salvou experimentos antigos neste navegador. Abra essa cópia para vê-los.',
  olderAt: (path) => ({
    before: 'Outra cópia desta página neste mesmo site salvou experimentos antigos neste navegador: ',
    part: `abrir ${path}`,
    after: '',
  }),
};
