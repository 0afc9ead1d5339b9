import type { LaterWords } from '../catalogue.ts';
import { fullCentimetres, fullMillimetres, megabytes } from '../numbers.ts';

export const pastedName: LaterWords['pastedName'] = 'Texto colado';

export const otherFile: LaterWords['otherFile'] = {
  archive:
    'Este é um arquivo de planilha ou um arquivo ZIP, que esta página não abre. Salve-o como CSV no programa dele e abra esse CSV.',
  oldDocument:
    'Esta é uma planilha antiga ou um documento antigo. Salve-o como CSV no programa dele e abra esse CSV.',
  compressed: 'Este arquivo está compactado. Descompacte-o primeiro.',
  pdf: 'Este é um PDF. Não dá para ler números dele: abra a tabela de onde ele veio.',
  picture: 'Esta é uma imagem. Não dá para ler números dela.',
};

export const intakeFault: LaterWords['intakeFault'] = {
  empty: 'O arquivo está vazio.',
  largeExperiment: (bytes, mostBytes) =>
    `O arquivo tem ${megabytes(bytes)}; um experimento tem no máximo ${megabytes(mostBytes)}.`,
  largeTable: (bytes, mostBytes) =>
    `O arquivo tem ${megabytes(bytes)}; uma tabela de marcas tem no máximo ${megabytes(mostBytes)}.`,
  unreadable: 'O arquivo não pode ser lido. Se ele foi movido ou mudado, escolha-o de novo.',
  longPaste: (millions) =>
    `O texto tem ${millions} milhões de caracteres: nenhuma tabela de marcas é tão longa.`,
  nested: 'O arquivo é muito mais aninhado que um experimento: é outra coisa.',
  noJson: (said) => `O arquivo não é um JSON completo (${said}). Salve-o de novo nesta página.`,
  classResult:
    'Este é o resultado de uma turma inteira: não contém marcas. Abra os arquivos dos grupos, ou o arquivo CSV da turma.',
  noResults: 'A tabela tem uma linha de títulos, mas nenhum resultado.',
  noUncertainty:
    'falta uma coluna standard_uncertainty_mps ou expanded_uncertainty_mps (95\u00a0%): sem ela os resultados não podem ser ponderados.',
  noSpeed: (lowestMps, highestMps, typed) =>
    `deve ser de ${lowestMps} a ${highestMps}\u00a0m/s, não ${typed}. Confira o número e a unidade.`,
  recordFull: (mostBytes) =>
    `com esta linha o arquivo do experimento passaria de ${megabytes(mostBytes)}. Comece outro para o resto, ou encurte as anotações.`,
  listFull: (most) =>
    `um experimento tem no máximo ${most} marcas, diapasões ou locais. Comece outro para o resto.`,
  badOrder: (order, { lowest, highest }) =>
    `a ordem deve ser de ${lowest} a ${highest}, não ${order}. Deixe vazio se você não souber.`,
  otherTube: (diameterM, ownDiameterM) =>
    `este tubo tem ${fullMillimetres(diameterM)}\u00a0mm de diâmetro, o do experimento ${fullMillimetres(ownDiameterM)}\u00a0mm. Outro tubo é outro experimento.`,
  otherMouth: (mouth, ownMouth) =>
    `esta boca é ${mouth}, a do experimento ${ownMouth}. Outro tubo é outro experimento.`,
  noReading: (zeroOffsetM, columnM, { lowest, highest }) =>
    `com o desvio do zero da régua de ${fullCentimetres(zeroOffsetM)}\u00a0cm, uma coluna de ${fullCentimetres(columnM)}\u00a0cm seria lida em ${fullCentimetres(columnM + zeroOffsetM)}\u00a0cm; as leituras vão de ${fullCentimetres(lowest)}\u00a0cm a ${fullCentimetres(highest)}\u00a0cm. Abra a tabela como experimento novo, ou mude antes o desvio do zero em Montagem.`,
};

export const intakeRemark: LaterWords['intakeRemark'] = {
  notRead: (headings) => `Estas colunas não são lidas: ${headings}.`,
  skipped: (rows) => `Estas linhas estão excluídas (excluded) e não podem ser lidas: ${rows}.`,
  mendFile:
    'Corrija estes campos no arquivo, ou salve-o de novo a partir desta página; depois abra-o outra vez.',
  goodPart:
    'Na parte sem erros falta o que está indicado aqui; os números que não foram usados estão na nota.',
  widestTaken: (widestM) =>
    `Os comprimentos têm incertezas diferentes (a usual onde não há nenhuma indicada): a maior, ${fullMillimetres(widestM)}\u00a0mm, vale para todos.`,
  offsetPutBack: (zeroOffsetM) =>
    `Os comprimentos da tabela são tomados como comprimentos da coluna: o desvio do zero da régua, ${fullMillimetres(zeroOffsetM)}\u00a0mm, é somado de novo.`,
};
