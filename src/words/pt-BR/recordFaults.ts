import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const recordFault: FirstWords['recordFault'] = {
  at: (path, what) => `${path}: ${what}`,
  mustBe: {
    object: (found) => `deve ser um objeto; o que está lá: ${found}.`,
    'whole-number': (found) => `deve ser um número inteiro; o que está lá: ${found}.`,
    flag: (found) => `deve ser true ou false; o que está lá: ${found}.`,
    text: (found, longest) =>
      `deve ser um texto de no máximo ${longest} caracteres; o que está lá: ${found}.`,
    list: (found, longest) =>
      `deve ser uma lista de no máximo ${counted(longest, 'item', 'itens')}; o que está lá: ${found}.`,
    number: (found, lowest, highest) =>
      `deve ser um número de ${lowest} a ${highest}; o que está lá: ${found}.`,
    choice: (found, choices) => `deve ser um destes: ${choices}; o que está lá: ${found}.`,
    reading: (found, lowest, highest, zeroOffset) =>
      `deve ser de ${lowest} a ${highest}, para que o desvio do zero de ${zeroOffset} deixe uma coluna; o que está lá: ${found}.`,
  },
  unequalLists: (one, other) => `deve ter em ${one} tantos valores quantos em ${other}.`,
  sameId: {
    forks: 'forks: dois diapasões têm o mesmo id.',
    places: 'places: dois locais têm o mesmo id.',
    marks: 'marks: duas marcas têm o mesmo id.',
  },
  ofMark: {
    fork: (markId, id) => `marca ${markId}: não há diapasão “${id}” neste arquivo.`,
    place: (markId, id) => `marca ${markId}: não há local “${id}” neste arquivo.`,
  },
  ofPresent: {
    fork: (id) => `present: não há diapasão “${id}” neste arquivo.`,
    place: (id) => `present: não há local “${id}” neste arquivo.`,
  },
  noObject: 'Isto não é um experimento: o esperado é um objeto JSON.',
  newerVersion: (version, newest) =>
    `Isto foi feito por uma versão mais nova desta página (schemaVersion é ${version}; esta lê até ${newest}). Recarregue a página para atualizá-la e abra de novo.`,
  noVersion: (found, newest) =>
    `schemaVersion deve ser um número inteiro de 1 a ${newest}; o que está lá: ${found}. Talvez seja um arquivo de outro programa.`,
  unreadable: (said) => `Isto não pode ser lido (${said}).`,
};
