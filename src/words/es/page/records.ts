import type { LaterWords } from '../../catalogue.ts';
import { counted, plural } from '../grammar.ts';
import { fixed, megabytes } from '../../numbers.ts';

export const records: LaterWords['records'] = {
  bringIn: 'Importar',
  bringInLead: 'O suelta archivos en cualquier parte de la página, o pega una tabla fuera de los campos.',
  toClass: { before: 'Archivos de muchos grupos: ', part: 'abrir la vista Clase', after: '' },
  report: 'Informe',
  reportLead:
    'Montaje, método, marcas, gráficas, cálculos, balance, resultado y comparación en pocas páginas, con espacio para nombres y discusión.',
  openReport: 'Abrir el informe',
};

export const experiments: LaterWords['experiments'] = {
  heading: 'Experimentos',
  newSame: 'Nuevo, mismo montaje',
  newPlain: 'Nuevo desde cero',
  noList: (why) => `Ahora no se puede leer la lista: ${why}`,
  none: 'Todavía no hay nada guardado. El primer cambio crea la primera entrada.',
  deleted: (count) => `Experimentos borrados (${count})`,
  newTitle: 'Título nuevo',
  leaveTitle: 'Cancelar',
  open: 'Abrir',
  openNamed: (title) => `Abrir ${title}`,
  rename: 'Renombrar',
  renameNamed: (title) => `Renombrar ${title}`,
  duplicate: 'Duplicar',
  duplicateNamed: (title) => `Duplicar ${title}`,
  delete: 'Borrar',
  deleteNamed: (title) => `Borrar ${title}`,
  bringBack: 'Recuperar',
  bringBackNamed: (title) => `Recuperar ${title}`,
  erase: 'Borrar para siempre…',
  eraseNamed: (title) => `Borrar ${title} para siempre`,
  askErase: (title) => ({
    heading: `¿Borrar «${title}» para siempre?`,
    message:
      'Sus marcas, registros de nivel, notas, pasos para deshacer y sonidos guardados se borran de este navegador y no se pueden recuperar.',
    no: 'Conservar',
    yes: 'Borrar',
  }),
  counts: (marks, places) => `${counted(marks, 'marca', 'marcas')}, ${counted(places, 'lugar', 'lugares')}`,
  openNow: 'abierto ahora',
  unreadable: 'Una entrada que no se puede leer',
  saveUnreadable: 'Guardarla tal como está',
  noFile: 'Esta entrada no se puede guardar como archivo. Se queda como está.',
  notDone: (why) => `No ha funcionado; no se ha cambiado nada. ${why}`,
};

export const files: LaterWords['files'] = {
  heading: 'Este experimento',
  title: 'Título',
  group: 'Grupo',
  className: 'Clase',
  note: 'Nota',
  saved:
    'Se guarda en este dispositivo mientras trabajas. El sonido y las marcas nunca salen de él por sí solos.',
  notSaved: (why) => `No guardado en este dispositivo (${why}). Guarda el archivo JSON antes de irte.`,
  save: 'Guardar todo como JSON',
  form: {
    before: 'El archivo JSON lo contiene todo; su formato está descrito en un ',
    part: 'esquema JSON',
    after: '.',
  },
};

export const tables: LaterWords['tables'] = {
  heading: 'Tablas',
  form: 'CSV para una hoja de cálculo que lee',
  forms: { point: '15.8 (coma entre celdas)', comma: '15,8 (punto y coma entre celdas)' },
  lead: 'Para hojas de cálculo y documentos, con todas las cifras y las unidades en los títulos. A las longitudes ya se les ha restado el desfase del cero de la regla.',
  csv: 'CSV',
  copy: 'Copiar',
  copied: (name, rows) =>
    `${name}: ${counted(rows, 'fila copiada, lista', 'filas copiadas, listas')} para pegar.`,
};

export const tableKinds: LaterWords['tableKinds'] = {
  marks: {
    name: 'Marcas',
    save: 'Guardar marcas como CSV',
    copy: 'Copiar marcas como tabla',
  },
  fit: {
    name: 'Ajuste, marca por marca',
    save: 'Guardar ajuste, marca por marca como CSV',
    copy: 'Copiar ajuste, marca por marca como tabla',
  },
  result: {
    name: 'Resultado',
    save: 'Guardar resultado como CSV',
    copy: 'Copiar resultado como tabla',
  },
  budget: {
    name: 'Balance de incertidumbre',
    save: 'Guardar balance de incertidumbre como CSV',
    copy: 'Copiar balance de incertidumbre como tabla',
  },
  trace: {
    name: 'Nivel alrededor de las marcas',
    save: 'Guardar nivel alrededor de las marcas como CSV',
    copy: 'Copiar nivel alrededor de las marcas como tabla',
  },
};

export const sounds: LaterWords['sounds'] = {
  heading: 'Sonido guardado',
  keep: 'Guardar desde ahora el sonido de cada golpe',
  lead: (usedBytes, limitBytes) =>
    `Desactivado cada vez que se abre la página, porque también se graban las voces de la sala. El sonido se queda en este dispositivo. El sonido de todos los experimentos ocupa ${megabytes(usedBytes)} de ${megabytes(limitBytes)}.`,
  again:
    '«Escuchar otra vez» analiza un sonido con el diapasón elegido ahora y sustituye las marcas encontradas en él. Deshacer recupera las anteriores.',
  marks: (count, numbers) => `${plural(count, 'marca', 'marcas')} ${numbers}`,
  save: 'Guardar como WAV',
  saveNamed: (number) => `Guardar el sonido ${number} como WAV`,
  listen: 'Escuchar otra vez',
  listenNamed: (number) => `Escuchar otra vez el sonido ${number}`,
  erase: 'Borrar…',
  eraseNamed: (number) => `Borrar el sonido ${number}`,
  askErase: (number, lengthS) => ({
    heading: `¿Borrar el sonido ${number}?`,
    message: `Se borran ${fixed(lengthS, 1)}\u00a0s de sonido de este navegador y no se pueden recuperar. Las marcas se quedan. Guárdalo antes como WAV si todavía lo necesitas.`,
    no: 'Conservar',
    yes: 'Borrar',
  }),
  notRead: (why) => `Este sonido no se puede leer: ${why}`,
  notErased: (why) => `Este sonido no se puede borrar: ${why}`,
};

export const stored: LaterWords['stored'] = {
  heading: 'Guardado en este dispositivo',
  lead: 'Experimentos con sus marcas, registros de nivel, notas y pasos para deshacer; sonido solo si lo pediste; tus ajustes; lo que has escrito y aún no has introducido; y una copia de este sitio, para que funcione sin conexión. Todo se queda en este navegador: no se envía nada.',
  inAll: (bytes) => `${megabytes(bytes)} en total, según el navegador.`,
  promised: 'El navegador ha prometido conservarlo hasta que lo borres.',
  notPromised:
    'El navegador puede borrarlo si falta espacio o si esta página no se usa durante mucho tiempo.',
  askToKeep: 'Pedir al navegador que lo conserve',
  kept: 'El navegador conserva tus experimentos hasta que los borres.',
  notKept:
    'El navegador no ha aceptado conservar tus datos. Guarda en archivos lo importante; instalar esta página puede ayudar.',
  erase: 'Borrar todo…',
  askErase: {
    heading: '¿Borrar todo lo guardado aquí?',
    message:
      'Todos los experimentos, también los borrados, y todo el sonido guardado se borran de este navegador y no se pueden recuperar. Guarda antes en archivos lo que todavía necesites.',
    no: 'Conservar todo',
    yes: 'Borrar todo',
  },
  notErased: (why) => `No se ha podido borrar todo: ${why}`,
  older:
    'Otra copia de esta página en este mismo sitio ha guardado experimentos antiguos en este navegador. Abre esa copia para verlos.',
  olderAt: (path) => ({
    before:
      'Otra copia de esta página en este mismo sitio ha guardado experimentos antiguos en este navegador: ',
    part: `abrir ${path}`,
    after: '',
  }),
};
