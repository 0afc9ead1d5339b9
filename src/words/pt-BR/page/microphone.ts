import type { LaterWords } from '../../catalogue.ts';

export const microphone: LaterWords['microphone'] = {
  name: 'Ajuda do microfone',
  heading: 'Ajuda com o microfone',
  lead: 'O microfone só é preciso para ouvir. Sem ele, você pode digitar comprimentos, abrir gravações e usar a coluna de treino.',
  bench: 'Enquanto você mede',
  benchHeads: { seen: 'O que você vê', why: 'Por quê', toDo: 'O que fazer' },
  administratorHeading: 'Para o administrador da escola',
  administratorLead:
    'Esta página precisa do microfone sem nenhum processamento de voz. Ela salva os experimentos no navegador e não envia nada.',
  administrator: 'Administrador',
  administratorHeads: { seen: 'Onde', why: 'O que importa', toDo: 'Configuração' },
  print: 'Imprimir esta página',
  back: 'Voltar às verificações',
};

export const benchHelp: LaterWords['benchHelp'] = {
  asking: {
    seen: 'Nada acontece depois de Ouvir',
    why: 'O navegador ainda espera sua permissão, muitas vezes em uma caixa pequena perto do endereço.',
    toDo: 'Escolha Permitir. Se você fechou a caixa, toque em Ouvir de novo.',
  },
  refused: {
    seen: 'O microfone foi recusado',
    why: 'Alguém já escolheu Bloquear para esta página, e o navegador se lembra disso.',
    toDo: 'Toque no ícone ao lado do endereço, ponha o microfone em Permitir e toque em Ouvir de novo.',
  },
  insecure: {
    seen: 'A página pede um endereço seguro',
    why: 'Navegadores não liberam o microfone por http simples nem para um arquivo do disco.',
    toDo: 'Abra a página pelo endereço https, ou em localhost neste computador.',
  },
  framed: {
    seen: 'A página está dentro de outra página',
    why: 'Uma plataforma de ensino a mostra em um quadro que não repassa o microfone.',
    toDo: 'Abra-a em uma aba própria.',
  },
  missing: {
    seen: 'Nenhum microfone encontrado, ou ele está em uso',
    why: 'Ele está desconectado ou desligado, ou outro programa (uma chamada, por exemplo) o usa.',
    toDo: 'Conecte-o, veja se ele tem um botão de ligar, encerre a chamada e toque em Ouvir de novo.',
  },
  doubtful: {
    seen: 'O nível é duvidoso: algo pode estar mudando o som',
    why: 'Um modo de voz do navegador, do sistema ou de um fone muda o volume sozinho.',
    toDo: 'Tire o fone, escolha o microfone embutido, desligue o modo de voz ou tente outro navegador.',
  },
  hopeless: {
    seen: 'Nada ajuda',
    why: 'Alguns sistemas só dão às páginas som processado.',
    toDo: 'Grave uma passagem com um gravador sem modo de voz e abra o arquivo aqui. Ele é analisado do mesmo jeito.',
  },
};

export const administratorHelp: LaterWords['administratorHelp'] = {
  site: {
    seen: 'Site, se você hospeda estes arquivos',
    why: 'Precisa ser servido por https, e um cabeçalho Permissions-Policy não pode bloquear o microfone.',
    toDo: 'Permissions-Policy: microphone=(self)',
  },
  platform: {
    seen: 'Plataforma de ensino',
    why: 'Um quadro só repassa o microfone se isso estiver escrito nele.',
    toDo: '<iframe allow="microphone" …>, ou um link que abra uma aba própria',
  },
  policies: {
    seen: 'Chrome, Edge, ChromeOS gerenciados',
    why: 'Políticas permitem ou proíbem o microfone; sites podem ser liberados um a um.',
    toDo: 'AudioCaptureAllowedUrls: o endereço desta página. Vale mesmo com AudioCaptureAllowed desligada',
  },
  windows: {
    seen: 'Windows',
    why: 'A opção de privacidade dos programas de desktop; os “aprimoramentos” do driver mudam o volume sozinhos.',
    toDo: 'Configurações, Privacidade, Microfone: ligado para o navegador. Configurações, Som, propriedades do microfone: aprimoramentos desligados',
  },
  mac: {
    seen: 'macOS',
    why: 'Cada programa pergunta uma vez; o isolamento de voz é um modo do microfone.',
    toDo: 'Ajustes do Sistema, Privacidade e Segurança, Microfone: ligado para o navegador. Modo do microfone na barra de menus: Padrão',
  },
  chromebook: {
    seen: 'ChromeOS',
    why: 'Uma opção para o aparelho todo e outra para o cancelamento de ruído ao lado do volume de entrada.',
    toDo: 'Acesso ao microfone ligado; cancelamento de ruído e transferência de estilo desligados',
  },
  tablet: {
    seen: 'iPad e iPhone',
    why: 'O navegador tem sua própria permissão; cada programa tem seu próprio modo do microfone.',
    toDo: 'Ajustes do navegador: microfone permitido. Central de Controle enquanto ouve: modo do microfone Padrão',
  },
  linux: {
    seen: 'Linux',
    why: 'O servidor de som pode estar com um cancelamento de eco ligado.',
    toDo: 'Escolher a entrada simples nas configurações de som',
  },
  network: {
    seen: 'Rede',
    why: 'A página não envia nada: o som é analisado no aparelho e nunca sai dele.',
    toDo: 'Nenhuma porta, servidor ou exceção é necessária, a não ser para carregar a página',
  },
};
