import type { LaterWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const tableFault: LaterWords['tableFault'] = {
  cell: (number) => `célula ${number}`,
  noText: 'Este não é um arquivo de texto. Salve a tabela como CSV, não no formato da planilha.',
  noContent: 'O arquivo está vazio.',
  noHeading: 'O arquivo não tem linha de títulos.',
  noRows: 'O arquivo tem uma linha de títulos, mas nenhuma linha de marcas.',
  allExcluded: 'Todas as linhas de marcas estão excluídas (excluded).',
  columnTwice: 'a coluna aparece mais de uma vez. Apague uma delas ou mude o nome.',
  quotes: {
    unclosed: 'as aspas (") são abertas e nunca fechadas. Feche-as ou apague-as.',
    'text-behind': 'há texto depois das aspas de fechamento ("). Ponha-o dentro das aspas ou apague-as.',
    stray: 'há aspas soltas (") dentro da célula. Apague-as.',
  },
  manyRows: (rows, most) =>
    `O arquivo tem ${counted(rows, 'linha', 'linhas')}; o máximo é ${most}. Divida-o em vários arquivos.`,
  manyCells: (cells, headings) =>
    `há ${counted(cells, 'célula', 'células')} sob ${counted(headings, 'título', 'títulos')}.`,
  decimalCommas: 'Com vírgulas decimais, ponha ponto e vírgula entre as células, ou as células entre aspas.',
  noneOf: (needed, found) => `nos títulos faltam todas as colunas ${needed}. Está escrito: ${found}.`,
  putDelimiters:
    'Ponha vírgulas, pontos e vírgulas ou tabulações entre as células, e nenhum título acima dos nomes das colunas (ou comece-o com #).',
  putHeading: 'Ponha uma linha de títulos no alto.',
  missing: (found, needed) => `a coluna está faltando. Os títulos são: ${found}. São necessárias: ${needed}.`,
  severalMissing: (found, needed) =>
    `estas colunas estão faltando. Os títulos são: ${found}. São necessárias: ${needed}.`,
  meant: (heading, column) => `Se for “${heading}”, mude o nome para ${column}.`,
  plainLengths:
    'Comprimentos sem unidade estão em cm; uma célula pode ter a própria unidade, como 158\u00a0mm.',
};
