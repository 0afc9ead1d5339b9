import type { LaterWords } from '../../catalogue.ts';

export const microphone: LaterWords['microphone'] = {
  name: 'Ayuda con el micrófono',
  heading: 'Ayuda con el micrófono',
  lead: 'El micrófono solo hace falta para escuchar. Sin él puedes escribir longitudes, abrir grabaciones y usar la columna de práctica.',
  bench: 'Mientras mides',
  benchHeads: { seen: 'Qué ves', why: 'Por qué', toDo: 'Qué hacer' },
  administratorHeading: 'Para el administrador del centro',
  administratorLead:
    'Esta página necesita el micrófono sin ningún procesamiento de voz. Guarda los experimentos en el navegador y no envía nada.',
  administrator: 'Administrador',
  administratorHeads: { seen: 'Dónde', why: 'Qué importa', toDo: 'Ajuste' },
  print: 'Imprimir esta página',
  back: 'Volver a las comprobaciones',
};

export const benchHelp: LaterWords['benchHelp'] = {
  asking: {
    seen: 'No pasa nada después de Escuchar',
    why: 'El navegador sigue esperando tu permiso, a menudo en un cuadro pequeño junto a la dirección.',
    toDo: 'Elige Permitir. Si has cerrado el cuadro, pulsa Escuchar otra vez.',
  },
  refused: {
    seen: 'El permiso para el micrófono está denegado',
    why: 'Alguien eligió una vez Bloquear para esta página y el navegador lo recuerda.',
    toDo: 'Pulsa el icono junto a la dirección, pon el micrófono en Permitir y pulsa Escuchar otra vez.',
  },
  insecure: {
    seen: 'La página pide una dirección segura',
    why: 'Los navegadores no dan acceso al micrófono por http sin cifrar ni a un archivo del disco.',
    toDo: 'Abre la página por su dirección https, o en localhost en este ordenador.',
  },
  framed: {
    seen: 'La página está dentro de otra página',
    why: 'Una plataforma educativa la muestra en un marco que no le da acceso al micrófono.',
    toDo: 'Ábrela en su propia pestaña.',
  },
  missing: {
    seen: 'No se encuentra ningún micrófono, o está ocupado',
    why: 'Está desconectado o apagado, o lo usa otro programa (por ejemplo, una llamada).',
    toDo: 'Conéctalo, busca su interruptor, termina la llamada y pulsa Escuchar otra vez.',
  },
  doubtful: {
    seen: 'El nivel es dudoso: algo puede estar cambiándolo',
    why: 'Un modo de voz del navegador, del sistema o de unos auriculares cambia el volumen por sí solo.',
    toDo: 'Quita los auriculares, elige el micrófono integrado, apaga el modo de voz o prueba otro navegador.',
  },
  hopeless: {
    seen: 'Nada funciona',
    why: 'Algunos sistemas solo dan a las páginas sonido procesado.',
    toDo: 'Graba una pasada con una grabadora sin modo de voz y abre el archivo aquí. Se analiza de la misma manera.',
  },
};

export const administratorHelp: LaterWords['administratorHelp'] = {
  site: {
    seen: 'Sitio, si aloja estos archivos',
    why: 'Debe servirse por https, y una cabecera Permissions-Policy no debe bloquear el micrófono.',
    toDo: 'Permissions-Policy: microphone=(self)',
  },
  platform: {
    seen: 'Plataforma educativa',
    why: 'Un marco solo da acceso al micrófono si se indica en él.',
    toDo: '<iframe allow="microphone" …>, o un enlace que abra su propia pestaña',
  },
  policies: {
    seen: 'Chrome, Edge, ChromeOS administrados',
    why: 'Las directivas permiten o prohíben el micrófono; se pueden permitir sitios concretos.',
    toDo: 'AudioCaptureAllowedUrls: la dirección de esta página. Cuenta aunque AudioCaptureAllowed esté desactivada',
  },
  windows: {
    seen: 'Windows',
    why: 'El interruptor de privacidad para programas de escritorio; las «mejoras» del controlador cambian el volumen por sí solas.',
    toDo: 'Configuración, Privacidad, Micrófono: activado para el navegador. Configuración, Sonido, propiedades del micrófono: mejoras desactivadas',
  },
  mac: {
    seen: 'macOS',
    why: 'Cada programa pregunta una vez; el aislamiento de voz es un modo del micrófono.',
    toDo: 'Ajustes del Sistema, Privacidad y seguridad, Micrófono: activado para el navegador. Modo de micrófono en la barra de menús: Estándar',
  },
  chromebook: {
    seen: 'ChromeOS',
    why: 'Un interruptor para todo el dispositivo y otro para la cancelación de ruido junto al volumen de entrada.',
    toDo: 'Acceso al micrófono activado; cancelación de ruido y transferencia de estilo desactivadas',
  },
  tablet: {
    seen: 'iPad y iPhone',
    why: 'El navegador tiene su propio interruptor; cada programa tiene su propio modo de micrófono.',
    toDo: 'Ajustes del navegador: micrófono permitido. Centro de control mientras escucha: modo de micrófono Estándar',
  },
  linux: {
    seen: 'Linux',
    why: 'El servidor de sonido puede tener activada una cancelación de eco.',
    toDo: 'Elegir la entrada sin procesar en los ajustes de sonido',
  },
  network: {
    seen: 'Red',
    why: 'La página no envía nada: el sonido se analiza en el dispositivo y nunca sale de él.',
    toDo: 'No hace falta ningún puerto, servidor ni excepción, salvo para cargar la página',
  },
};
