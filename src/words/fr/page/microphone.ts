import type { LaterWords } from '../../catalogue.ts';

export const microphone: LaterWords['microphone'] = {
  name: 'Aide pour le micro',
  heading: 'Aide pour le micro',
  lead: 'Le micro ne sert qu’à écouter. Sans micro, vous pouvez taper des longueurs, ouvrir des enregistrements et utiliser la colonne d’entraînement.',
  bench: 'Pendant la mesure',
  benchHeads: { seen: 'Ce que vous voyez', why: 'Pourquoi', toDo: 'Que faire' },
  administratorHeading: 'Pour l’administrateur de l’établissement',
  administratorLead:
    'Cette page a besoin du micro sans aucun traitement de la voix. Elle enregistre les expériences dans le navigateur et n’envoie rien.',
  administrator: 'Administrateur',
  administratorHeads: { seen: 'Où', why: 'Ce qui compte', toDo: 'Réglage' },
  print: 'Imprimer cette page',
  back: 'Retour aux vérifications',
};

export const benchHelp: LaterWords['benchHelp'] = {
  asking: {
    seen: 'Rien ne se passe après «\u00a0Écouter\u00a0»',
    why: 'Le navigateur attend encore votre autorisation, souvent dans une petite fenêtre près de l’adresse.',
    toDo: 'Choisissez «\u00a0Autoriser\u00a0». Si vous avez fermé la fenêtre, appuyez encore sur «\u00a0Écouter\u00a0».',
  },
  refused: {
    seen: 'Le micro a été refusé',
    why: 'Quelqu’un a un jour choisi «\u00a0Bloquer\u00a0» pour cette page, et le navigateur s’en souvient.',
    toDo: 'Appuyez sur l’icône à côté de l’adresse, mettez le micro sur «\u00a0Autoriser\u00a0», puis appuyez encore sur «\u00a0Écouter\u00a0».',
  },
  insecure: {
    seen: 'La page demande une adresse sécurisée',
    why: 'Les navigateurs ne donnent pas le micro en simple http ni à un fichier ouvert depuis le disque.',
    toDo: 'Ouvrez la page par son adresse https, ou à l’adresse localhost sur cet ordinateur.',
  },
  framed: {
    seen: 'La page est intégrée dans une autre page',
    why: 'Une plateforme d’apprentissage la montre dans un cadre qui ne transmet pas le micro.',
    toDo: 'Ouvrez-la dans son propre onglet.',
  },
  missing: {
    seen: 'Aucun micro trouvé, ou il est déjà utilisé',
    why: 'Il est débranché ou éteint, ou un autre programme (un appel, par exemple) l’utilise.',
    toDo: 'Branchez-le, cherchez son interrupteur, terminez l’appel, puis appuyez encore sur «\u00a0Écouter\u00a0».',
  },
  doubtful: {
    seen: 'Le niveau est douteux : quelque chose le modifie peut-être',
    why: 'Un mode vocal du navigateur, du système ou d’un casque modifie le volume de lui-même.',
    toDo: 'Enlevez le casque, choisissez le micro intégré, désactivez le mode vocal ou essayez un autre navigateur.',
  },
  hopeless: {
    seen: 'Rien n’y fait',
    why: 'Certains systèmes ne donnent aux pages qu’un son traité.',
    toDo: 'Enregistrez un passage avec un enregistreur sans mode vocal et ouvrez le fichier ici. Il est analysé de la même façon.',
  },
};

export const administratorHelp: LaterWords['administratorHelp'] = {
  site: {
    seen: 'Site, si vous hébergez ces fichiers',
    why: 'Il doit être servi en https, et un en-tête Permissions-Policy ne doit pas bloquer le micro.',
    toDo: 'Permissions-Policy: microphone=(self)',
  },
  platform: {
    seen: 'Plateforme d’apprentissage',
    why: 'Un cadre ne transmet le micro que s’il l’autorise expressément.',
    toDo: '<iframe allow="microphone" …>, ou un lien qui ouvre un nouvel onglet',
  },
  policies: {
    seen: 'Chrome, Edge, ChromeOS gérés',
    why: 'Des règles autorisent ou interdisent le micro ; des sites peuvent être autorisés un par un.',
    toDo: 'AudioCaptureAllowedUrls : l’adresse de cette page. Elle compte même si AudioCaptureAllowed est désactivé',
  },
  windows: {
    seen: 'Windows',
    why: 'L’interrupteur de confidentialité des applications de bureau ; les « améliorations » du pilote changent le volume d’elles-mêmes.',
    toDo: 'Paramètres, Confidentialité, Microphone : activé pour le navigateur. Paramètres, Son, propriétés du microphone : améliorations désactivées',
  },
  mac: {
    seen: 'macOS',
    why: 'Chaque programme demande une fois ; l’isolement de la voix est un mode du micro.',
    toDo: 'Réglages Système, Confidentialité et sécurité, Microphone : activé pour le navigateur. Mode micro dans la barre des menus : Standard',
  },
  chromebook: {
    seen: 'ChromeOS',
    why: 'Un interrupteur pour tout l’appareil, et un pour la suppression du bruit à côté du volume d’entrée.',
    toDo: 'Accès au micro activé ; suppression du bruit et transfert de style désactivés',
  },
  tablet: {
    seen: 'iPad et iPhone',
    why: 'Le navigateur a son propre interrupteur ; chaque programme a son propre mode micro.',
    toDo: 'Réglages du navigateur : micro autorisé. Centre de contrôle pendant l’écoute : mode micro Standard',
  },
  linux: {
    seen: 'Linux',
    why: 'Le serveur de son applique peut-être une annulation d’écho.',
    toDo: 'Choisir l’entrée sans traitement dans les réglages du son',
  },
  network: {
    seen: 'Réseau',
    why: 'La page n’envoie rien : le son est analysé sur l’appareil et ne le quitte jamais.',
    toDo: 'Aucun port, serveur ni exception nécessaire, sauf pour charger la page',
  },
};
