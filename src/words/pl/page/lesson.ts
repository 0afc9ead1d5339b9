import type { LaterWords } from '../../catalogue.ts';

export const lesson: LaterWords['lesson'] = {
  heading: 'Link do lekcji',
  lead: 'Dla nauczycieli: link dla klasy z kamertonami, rurą, linijką, miejscami i słupem ustawionymi tak jak teraz. Nie zawiera znaczników ani nazwisk.',
  task: 'Co zmierzyć',
  language: 'Język zadania (pl, en, de …)',
  hideExpected: 'Ukryj, gdzie spodziewane są rezonanse',
  hideTheory: 'Ukryj prędkość przewidywaną',
  hideTruth: 'Ukryj prawdziwe wartości słupa do ćwiczeń',
  apart:
    'Dwie ostatnie opcje są niezależne. Gdy ukryta jest tylko prędkość przewidywana, „Pokaż prawdziwe wartości” nadal zdradza prędkość dźwięku każdemu, kto ćwiczy. Zaznacz obie, żeby ukryć ją wszędzie.',
  limits:
    'Nie da się ukryć tego, co uczniowie sami obliczą lub znajdą, ani tej strony otwartej bez linku, ani kodu źródłowego programu. Ukryta odpowiedź jest tylko niewidoczna; to nie jest zabezpieczenie.',
  make: 'Utwórz link',
  link: 'Link',
  copy: 'Kopiuj link',
  code: 'Pokaż jako kod QR',
  codeName: 'lekcja',
  tooLongForCode: 'Link jest za długi na kod QR. Skróć zadanie albo wyślij link.',
  reveal: 'W odpowiedniej chwili pokaż klasie to, co było ukryte',
  revealCode: 'Kod do podania na głos; uczniowie wpisują go w Archiwum',
  revealLink: 'Link, który robi to samo',
  copyReveal: 'Kopiuj ten link',
  showRevealCode: 'Pokaż ten link jako kod QR',
  revealName: 'to, co ukrywa lekcja',
  copied: 'Skopiowano link.',
  notCopied: 'Przeglądarka nie pozwoliła na kopiowanie. Zaznacz link i skopiuj go ręcznie.',
};

export const keptBack: LaterWords['keptBack'] = {
  heading: 'Co ukrywa ta lekcja',
  until: (list) => `Ukryte, dopóki nauczyciel tego nie pokaże: ${list}.`,
  expected: 'gdzie spodziewane są rezonanse',
  theory: 'przewidywana prędkość dźwięku',
  truth: 'prawdziwe wartości słupa do ćwiczeń',
  code: 'Kod od nauczyciela',
  show: 'Pokaż',
  noCode: 'Ta lekcja nie ma kodu, który by to pokazał.',
};
