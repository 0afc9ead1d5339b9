import type { LaterWords } from '../../catalogue.ts';
import { counted, plural } from '../grammar.ts';
import { fixed, megabytes } from '../../numbers.ts';

export const records: LaterWords['records'] = {
  bringIn: 'Importer',
  bringInLead:
    'Vous pouvez aussi déposer des fichiers n’importe où sur la page, ou coller un tableau en dehors des champs.',
  toClass: { before: 'Fichiers de plusieurs groupes : ', part: 'ouvrir la vue Classe', after: '' },
  report: 'Compte rendu',
  reportLead:
    'Montage, méthode, repères, graphiques, calculs, bilan, résultat et comparaison en quelques pages, avec de la place pour les noms et la discussion.',
  openReport: 'Ouvrir le compte rendu',
};

export const experiments: LaterWords['experiments'] = {
  heading: 'Expériences',
  newSame: 'Nouvelle, même montage',
  newPlain: 'Nouvelle, de zéro',
  noList: (why) => `La liste ne peut pas être lue pour l’instant : ${why}`,
  none: 'Rien n’est encore enregistré. Le premier changement crée la première entrée.',
  deleted: (count) => `Expériences supprimées (${count})`,
  newTitle: 'Nouveau titre',
  leaveTitle: 'Annuler',
  open: 'Ouvrir',
  openNamed: (title) => `Ouvrir ${title}`,
  rename: 'Renommer',
  renameNamed: (title) => `Renommer ${title}`,
  duplicate: 'Dupliquer',
  duplicateNamed: (title) => `Dupliquer ${title}`,
  delete: 'Supprimer',
  deleteNamed: (title) => `Supprimer ${title}`,
  bringBack: 'Récupérer',
  bringBackNamed: (title) => `Récupérer ${title}`,
  erase: 'Effacer définitivement…',
  eraseNamed: (title) => `Effacer définitivement ${title}`,
  askErase: (title) => ({
    heading: `Effacer définitivement « ${title} » ?`,
    message:
      'Ses repères, courbes de niveau, notes, étapes à annuler et sons enregistrés seront effacés de ce navigateur, sans retour possible.',
    no: 'Garder',
    yes: 'Effacer',
  }),
  counts: (marks, places) => `${counted(marks, 'repère', 'repères')}, ${counted(places, 'lieu', 'lieux')}`,
  openNow: 'ouverte',
  unreadable: 'Une entrée illisible',
  saveUnreadable: 'L’enregistrer telle quelle',
  noFile: 'Cette entrée ne peut pas être enregistrée en fichier. Elle reste telle quelle.',
  notDone: (why) => `Cela n’a pas marché ; rien n’a été changé. ${why}`,
};

export const files: LaterWords['files'] = {
  heading: 'Cette expérience',
  title: 'Titre',
  group: 'Groupe',
  className: 'Classe',
  note: 'Note',
  saved:
    'Enregistré sur cet appareil au fur et à mesure. Le son et les repères ne le quittent jamais d’eux-mêmes.',
  notSaved: (why) => `Pas enregistré sur cet appareil (${why}). Enregistrez le fichier JSON avant de partir.`,
  save: 'Tout enregistrer en JSON',
  form: {
    before: 'Le fichier JSON contient tout ; son format est décrit dans un ',
    part: 'schéma JSON',
    after: '.',
  },
};

export const tables: LaterWords['tables'] = {
  heading: 'Tableaux',
  form: 'CSV pour un tableur qui lit',
  forms: { point: '15.8 (virgule entre cellules)', comma: '15,8 (point-virgule entre cellules)' },
  lead: 'Pour tableurs et documents, avec tous les chiffres\u00a0; les unités sont dans les titres. Le décalage du zéro de la règle est déjà retranché des longueurs.',
  csv: 'CSV',
  copy: 'Copier',
  copied: (name, rows) =>
    `${name} : ${counted(rows, 'ligne copiée, prête', 'lignes copiées, prêtes')} à coller.`,
};

export const tableKinds: LaterWords['tableKinds'] = {
  marks: {
    name: 'Repères',
    save: 'Enregistrer les repères en CSV',
    copy: 'Copier les repères en tableau',
  },
  fit: {
    name: 'Ajustement, repère par repère',
    save: 'Enregistrer l’ajustement, repère par repère en CSV',
    copy: 'Copier l’ajustement, repère par repère en tableau',
  },
  result: {
    name: 'Résultat',
    save: 'Enregistrer le résultat en CSV',
    copy: 'Copier le résultat en tableau',
  },
  budget: {
    name: 'Bilan d’incertitude',
    save: 'Enregistrer le bilan d’incertitude en CSV',
    copy: 'Copier le bilan d’incertitude en tableau',
  },
  trace: {
    name: 'Niveau autour des repères',
    save: 'Enregistrer le niveau autour des repères en CSV',
    copy: 'Copier le niveau autour des repères en tableau',
  },
};

export const sounds: LaterWords['sounds'] = {
  heading: 'Sons enregistrés',
  keep: 'Enregistrer désormais le son de chaque frappe',
  lead: (usedBytes, limitBytes) =>
    `Désactivé à chaque ouverture de la page, car les voix de la salle sont enregistrées aussi. Le son reste sur cet appareil. Toutes les expériences utilisent ${megabytes(usedBytes)} sur ${megabytes(limitBytes)}.`,
  again:
    '« Réécouter » analyse un son avec le diapason choisi maintenant et remplace les repères qui y avaient été trouvés. Annuler fait revenir les anciens.',
  marks: (count, numbers) => `${plural(count, 'repère', 'repères')} ${numbers}`,
  save: 'Enregistrer en WAV',
  saveNamed: (number) => `Enregistrer le son ${number} en WAV`,
  listen: 'Réécouter',
  listenNamed: (number) => `Réécouter le son ${number}`,
  erase: 'Effacer…',
  eraseNamed: (number) => `Effacer le son ${number}`,
  askErase: (number, lengthS) => ({
    heading: `Effacer le son ${number} ?`,
    message: `${fixed(lengthS, 1)}\u00a0s de son seront effacées de ce navigateur, sans retour possible. Les repères restent. Enregistrez d’abord le son en WAV si vous en avez encore besoin.`,
    no: 'Garder',
    yes: 'Effacer',
  }),
  notRead: (why) => `Ce son ne peut pas être lu : ${why}`,
  notErased: (why) => `Ce son ne peut pas être effacé : ${why}`,
};

export const stored: LaterWords['stored'] = {
  heading: 'Enregistré sur cet appareil',
  lead: 'Les expériences avec leurs repères, courbes de niveau, notes et étapes à annuler ; du son seulement si vous l’avez demandé ; vos réglages ; ce que vous avez tapé sans encore le valider ; et une copie de ce site, pour qu’il marche hors ligne. Tout reste dans ce navigateur : rien n’est envoyé.',
  inAll: (bytes) => `${megabytes(bytes)} en tout, d’après le navigateur.`,
  promised: 'Le navigateur a promis de tout garder jusqu’à ce que vous l’effaciez.',
  notPromised:
    'Le navigateur peut tout supprimer si la place manque ou si cette page n’est pas utilisée pendant longtemps.',
  askToKeep: 'Demander au navigateur de tout garder',
  kept: 'Le navigateur garde vos expériences jusqu’à ce que vous les effaciez.',
  notKept:
    'Le navigateur n’a pas accepté de garder vos données. Enregistrez en fichier ce qui est important ; installer cette page peut aider.',
  erase: 'Tout effacer…',
  askErase: {
    heading: 'Effacer tout ce qui est enregistré ici ?',
    message:
      'Toutes les expériences, même supprimées, et tous les sons enregistrés seront effacés de ce navigateur, sans retour possible. Enregistrez d’abord en fichier ce dont vous avez encore besoin.',
    no: 'Tout garder',
    yes: 'Tout effacer',
  },
  notErased: (why) => `Tout n’a pas pu être effacé : ${why}`,
  older:
    'Une autre copie de cette page, sur ce même site, a enregistré d’anciennes expériences dans ce navigateur. Ouvrez cette copie pour les voir.',
  olderAt: (path) => ({
    before:
      'Une autre copie de cette page, sur ce même site, a enregistré d’anciennes expériences dans ce navigateur : ',
    part: `ouvrir ${path}`,
    after: '',
  }),
};
