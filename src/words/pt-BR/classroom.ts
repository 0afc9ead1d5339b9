import type { LaterWords } from '../catalogue.ts';
import { counted, plural } from './grammar.ts';

export const classResult: LaterWords['classResult'] = {
  none: 'Nenhum grupo tem resultado ainda.',
  counted: (groups, all) => `Grupos que contam: ${groups} de ${all}.`,
  others: 'Os outros estão na tabela, com o motivo.',
  interval:
    'Em 95 de 100 turmas como esta, a velocidade verdadeira fica dentro do ±, se os grupos não tiverem nenhum erro em comum.',
  spread: (mps) =>
    `Os resultados dos grupos diferem mais do que suas próprias incertezas explicam. O desvio-padrão a mais é de ${mps}\u00a0m/s. Um grupo sozinho não consegue ver esses erros.`,
  noSpread: 'Os grupos não diferem mais do que suas próprias incertezas explicam.',
  noAir: 'Nenhum grupo anotou a temperatura: as velocidades são usadas como estão.',
  referred: (celsius) =>
    `Todas as velocidades são convertidas para ${celsius}\u00a0°C com a fórmula da velocidade do som no ar.`,
  withoutAir: (groups) =>
    plural(
      groups,
      `${groups} grupo não anotou a temperatura: sua velocidade é usada como está.`,
      `${groups} grupos não anotaram a temperatura: suas velocidades são usadas como estão.`,
    ),
  theory: (mps, difference) =>
    `A velocidade prevista para este ar é ${mps}\u00a0m/s. Diferença entre a turma e a previsão: ${difference}\u00a0m/s.`,
  shared:
    'Erros comuns a todos os grupos, como os de réguas do mesmo fabricante, não se compensam na média e não estão nesta incerteza.',
  method:
    'Método: média com efeitos aleatórios (Paule & Mandel 1982); intervalo segundo Hartung & Knapp 2001.',
};

export const classGroup: LaterWords['classGroup'] = {
  row: (number) => `Linha ${number}`,
  mark: (number) => `Marca ${number}`,
  markCause: (mark, cause) => `${mark}: ${cause}`,
  noResult: 'Sem resultado.',
  outlier: (difference) =>
    `Valor discrepante, não conta: ${difference}\u00a0m/s em relação ao resultado da turma.`,
  noReason: 'Não vieram com ele marcas que pudessem mostrar o motivo.',
  held: 'Só conta depois que você verificar. Marque a caixa para contá-lo como está.',
  longColumn: (metres) =>
    `Uma coluna de ${metres}\u00a0m é mais longa que os tubos de escola. Foram digitados milímetros em vez de centímetros?`,
  resultAlone: 'Um resultado sem marcas.',
  noAir: 'Temperatura não anotada: a velocidade é usada como está.',
  unnamed: (table, row) => `${table}, linha ${row}`,
};

export const sameGroup: LaterWords['sameGroup'] = {
  'same marks': (group) => `As mesmas marcas de “${group}”.`,
  'earlier state of the same experiment': (group) => `Uma versão anterior de “${group}”.`,
  'same group again': (group) => `O mesmo grupo que “${group}”.`,
};

export const classDiscussion: LaterWords['classDiscussion'] = {
  spread: 'Os resultados dos grupos diferem mais do que as incertezas permitem. Em que ninguém pensou?',
  agree: 'Os grupos concordam dentro das incertezas. Em que todos podem ter errado juntos?',
  apart: (groups) =>
    `Estes resultados estão afastados dos outros: ${groups}. Todos podem aprender com eles: o que na montagem causaria exatamente essa diferença?`,
  others: (count) => counted(count, 'outro', 'outros'),
  temperatures: (coldest, warmest) =>
    `O ar estava entre ${coldest} e ${warmest}\u00a0°C. No gráfico de velocidade e temperatura, quantos m/s por grau você encontra, e as incertezas dos grupos são pequenas o bastante para mostrar isso?`,
  moreGroups: 'Como mudariam a média e sua incerteza se o dobro de grupos tivesse medido?',
};

export const spreadPicture: LaterWords['spreadPicture'] = {
  title: 'Dispersão da turma',
  heading: 'Velocidade do som, grupo a grupo',
  axis: 'velocidade do som, m/s (barras: 95\u00a0%)',
  shows: (groups, mps, uncertainty) =>
    `${counted(groups, 'grupo', 'grupos')}, da menor à maior velocidade, com intervalos de 95\u00a0%. A faixa é o resultado da turma, ${mps} ± ${uncertainty}\u00a0m/s. Pontos vazados não contam.`,
  outliers: (count) =>
    plural(count, 'A cruz é um valor discrepante.', `As ${count} cruzes são valores discrepantes.`),
  beyond: 'O que fica além da borda é desenhado na borda.',
};
