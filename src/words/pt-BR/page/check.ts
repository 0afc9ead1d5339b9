import { fixed } from '../../numbers.ts';
import type { LaterWords } from '../../catalogue.ts';

export const check: LaterWords['check'] = {
  ways: 'Verificações',
  sound: 'Entrada e diapasão',
  gain: 'Ganho',
  length: 'Um comprimento',
  tone: 'Tom tocado',
  sweep: 'Varredura',
};

export const checkLength: LaterWords['checkLength'] = {
  heading: 'Verificar um comprimento',
  lead: 'A coluna fica como está. Bata no diapasão, segure-o na boca e longe dela, alternando: esta página diz se esse comprimento ressoa.',
  begin: 'Começar a verificação',
  again: 'Começar de novo',
  end: 'Encerrar a verificação',
  listenFirst: 'Primeiro toque em Ouvir.',
};

export const gainCheck: LaterWords['gainCheck'] = {
  name: 'Teste de ganho',
  heading: 'Algo muda o nível?',
  lead: 'Sistemas feitos para chamadas mudam o volume sozinhos e tiram sons que não são fala, principalmente os de diapasões. Em uma sala silenciosa isso não aparece.',
  browserSays: 'O que o navegador diz',
  steps: [
    'Fixe a coluna e o microfone.',
    'Bata no diapasão uma vez, em borracha, e apoie a haste perto do microfone.',
    'Fique parado por dez segundos enquanto alguém fala.',
  ],
  begin: 'Começar o teste de ganho',
  again: 'Começar de novo',
  end: 'Encerrar o teste de ganho',
  listenFirst: 'Primeiro ouça com o microfone.',
  help: 'Ajuda com o microfone, e o que um administrador pode fazer',
  microphone: 'Microfone',
  systemsChoice: 'O que o sistema escolher',
};

export const soundCheck: LaterWords['soundCheck'] = {
  heading: 'Entrada e diapasão',
  lead: 'Toque em Ouvir, fique em silêncio por três segundos, depois bata no diapasão e segure-o longe do tubo.',
  fork: 'Diapasão',
  use: 'Usar a frequência medida no ajuste',
  used: 'A frequência medida agora conta no ajuste.',
  caution: 'Bata o diapasão em borracha ou na sola de um sapato, nunca em vidro nem em uma quina dura.',
  usePractice: {
    heading: 'Usar a frequência do diapasão de treino?',
    message:
      'O que se ouviu foi o diapasão de treino. A frequência dele contaria para o diapasão deste experimento, também para marcas feitas com um de verdade.',
    no: 'Deixar o diapasão como está',
    yes: 'Usar',
  },
};

export const tone: LaterWords['tone'] = {
  heading: 'Tom tocado',
  lead: 'No lugar de um diapasão: um tom senoidal constante de um alto-falante na boca da coluna.',
  pitch: 'Frequência do tom',
  loudness: 'Volume',
  loudnessNow: (percent) => `${percent}\u00a0% do limite`,
  play: 'Tocar o tom',
  stop: 'Parar o tom',
  mute: 'Um celular ou tablet não toca nada enquanto está no modo silencioso: desative esse modo primeiro.',
  cannotPlay:
    'Não é possível tocar o tom aqui. Confira se há um alto-falante conectado e se nenhum outro programa o ocupa, e tente de novo; se não adiantar, recarregue a página.',
  caution:
    'Começa baixo e fica abaixo de um limite. Antes, abaixe o volume do aparelho, e nunca o toque em fones que alguém esteja usando.',
};

export const sweepCard: LaterWords['sweepCard'] = {
  heading: 'Varredura com a coluna fixa',
  lead: 'O comprimento fica; um tom tocado sobe devagar e desce de novo. Onde ele é mais forte tanto na subida como na descida, a coluna ressoa.',
  length: 'Comprimento da coluna',
  lengthField: 'Comprimento da coluna na varredura',
  from: 'Varrer de',
  to: 'Varrer até',
  practice: 'Treino: simulado, sem som',
  start: 'Iniciar a varredura',
  cancel: 'Cancelar a varredura',
  takes: (durationS) => `dura ${fixed(durationS, 0)}\u00a0s`,
  takesUnknown: 'dura —',
  sweeping: 'Varrendo',
  soFar: 'O que se ouviu até agora. Uma ressonância aparece como um morro, na subida e na descida.',
  noLength: 'Digite primeiro o comprimento da coluna.',
  noResonance:
    'Nenhuma ressonância desta coluna foi ouvida tanto na subida como na descida. Aproxime o alto-falante e o microfone da boca, ou amplie a varredura.',
  order: 'Ordem',
  resonance: 'Ressonância',
  speed: 'Velocidade obtida',
  note: 'Adicionar às anotações',
  noted: 'O resultado da varredura está agora nas anotações, em Arquivo.',
  doubts: 'Dá para confiar nesta varredura?',
  inDoubt: 'Em dúvida.',
  notProven: 'Ainda não verificado.',
  caution:
    'O alto-falante fica na boca da coluna, o microfone ao lado. O tom começa baixo e fica abaixo de um limite. Antes, abaixe o volume do aparelho, e nunca o toque em fones que alguém esteja usando.',
};
