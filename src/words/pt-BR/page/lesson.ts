import type { LaterWords } from '../../catalogue.ts';

export const lesson: LaterWords['lesson'] = {
  heading: 'Link da aula',
  lead: 'Para professores: um link para a turma com os diapasões, o tubo, a régua, os locais e a coluna como estão agora. Não contém marcas nem nomes.',
  task: 'O que medir',
  language: 'Idioma da tarefa (pt-BR, en …)',
  hideExpected: 'Esconder onde se esperam ressonâncias',
  hideTheory: 'Esconder a velocidade prevista',
  hideTruth: 'Esconder os valores verdadeiros da coluna de treino',
  apart:
    'As duas últimas são independentes. Se só a previsão estiver escondida, “Mostrar os valores verdadeiros” ainda revela a velocidade do som a quem treina. Marque as duas para escondê-la em toda parte.',
  limits:
    'O que não dá para esconder: o que os alunos calculam ou pesquisam sozinhos, esta página aberta sem o link e o código-fonte do programa. Esconder tira a resposta da vista; não é uma tranca.',
  make: 'Criar o link',
  link: 'Link',
  copy: 'Copiar o link',
  code: 'Mostrar como código QR',
  codeName: 'a aula',
  tooLongForCode: 'O link é longo demais para um código QR. Encurte a tarefa ou envie o link.',
  reveal: 'Quando for a hora, mostrar à turma o que estava escondido',
  revealCode: 'Código para ditar; os alunos o digitam em Arquivo',
  revealLink: 'Link que faz o mesmo',
  copyReveal: 'Copiar o link que mostra',
  showRevealCode: 'Mostrar esse link como código QR',
  revealName: 'o que a aula esconde',
  copied: 'O link foi copiado.',
  notCopied: 'O navegador não permitiu copiar. Selecione o link e copie à mão.',
};

export const keptBack: LaterWords['keptBack'] = {
  heading: 'O que esta aula esconde',
  until: (list) => `Escondido até seu professor mostrar: ${list}.`,
  expected: 'onde se esperam ressonâncias',
  theory: 'a velocidade do som prevista',
  truth: 'os valores verdadeiros da coluna de treino',
  code: 'Código do professor',
  show: 'Mostrar',
  noCode: 'Esta aula não tem um código que mostre isso.',
};
