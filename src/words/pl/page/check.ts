import { fixed } from '../../numbers.ts';
import type { LaterWords } from '../../catalogue.ts';

export const check: LaterWords['check'] = {
  ways: 'Sprawdzanie',
  sound: 'Wejście i kamerton',
  gain: 'Wzmocnienie',
  length: 'Długość',
  tone: 'Odtwarzany ton',
  sweep: 'Przemiatanie',
};

export const checkLength: LaterWords['checkLength'] = {
  heading: 'Sprawdź długość',
  lead: 'Nie zmieniaj długości słupa. Uderz w kamerton, trzymaj go na przemian przy wylocie i z dala od niego: ta strona powie, czy przy tej długości jest rezonans.',
  begin: 'Zacznij sprawdzanie',
  again: 'Zacznij od nowa',
  end: 'Zakończ sprawdzanie',
  listenFirst: 'Najpierw naciśnij „Słuchaj”.',
};

export const gainCheck: LaterWords['gainCheck'] = {
  name: 'Test wzmocnienia',
  heading: 'Czy coś zmienia poziom dźwięku?',
  lead: 'Programy i systemy do rozmów same zmieniają głośność i usuwają dźwięki, które nie są mową, zwłaszcza dźwięk kamertonu. W cichej sali tego nie widać.',
  browserSays: 'Co podaje przeglądarka',
  steps: [
    'Unieruchom słup i mikrofon.',
    'Uderz raz kamertonem o gumę i oprzyj jego trzonek blisko mikrofonu.',
    'Nie ruszaj się przez dziesięć sekund, gdy ktoś mówi.',
  ],
  begin: 'Zacznij test wzmocnienia',
  again: 'Zacznij od nowa',
  end: 'Zakończ test wzmocnienia',
  listenFirst: 'Najpierw włącz słuchanie z mikrofonu.',
  help: 'Pomoc dotycząca mikrofonu, także dla administratora',
  microphone: 'Mikrofon',
  systemsChoice: 'Wybór systemu',
};

export const soundCheck: LaterWords['soundCheck'] = {
  heading: 'Wejście i kamerton',
  lead: 'Naciśnij „Słuchaj”, zachowaj ciszę przez trzy sekundy, potem uderz w kamerton i trzymaj go z dala od rury.',
  fork: 'Kamerton',
  use: 'Użyj zmierzonej częstotliwości w dopasowaniu',
  used: 'W dopasowaniu liczy się teraz zmierzona częstotliwość.',
  caution: 'Uderzaj kamertonem o gumę lub podeszwę buta, nigdy o szkło ani twardą krawędź.',
  usePractice: {
    heading: 'Użyć częstotliwości kamertonu do ćwiczeń?',
    message:
      'Słychać było kamerton do ćwiczeń. Jego częstotliwość liczyłaby się dla kamertonu tego doświadczenia, także dla znaczników zrobionych z prawdziwym.',
    no: 'Nie zmieniaj kamertonu',
    yes: 'Użyj',
  },
};

export const tone: LaterWords['tone'] = {
  heading: 'Odtwarzany ton',
  lead: 'Zamiast kamertonu: stały ton sinusoidalny z głośnika trzymanego przy wylocie słupa.',
  pitch: 'Częstotliwość tonu',
  loudness: 'Głośność',
  loudnessNow: (percent) => `${percent}\u00a0% limitu`,
  play: 'Odtwórz ton',
  stop: 'Zatrzymaj ton',
  mute: 'Telefon i tablet nic nie odtwarzają, gdy są wyciszone: najpierw wyłącz wyciszenie.',
  cannotPlay:
    'Nie można tu odtworzyć tonu. Sprawdź, czy głośnik jest podłączony i czy nie zajmuje go inny program, i spróbuj ponownie; jeśli to nie pomoże, wczytaj stronę ponownie.',
  caution:
    'Ton zaczyna się cicho i nie przekracza ustalonego limitu. Najpierw przycisz urządzenie i nigdy nie odtwarzaj tonu w słuchawkach, które ktoś ma na uszach.',
};

export const sweepCard: LaterWords['sweepCard'] = {
  heading: 'Przemiatanie przy stałej długości słupa',
  lead: 'Długość słupa się nie zmienia, a częstotliwość odtwarzanego tonu powoli rośnie i znów maleje. Słup rezonuje tam, gdzie ton jest najgłośniejszy zarówno w górę, jak i w dół.',
  length: 'Długość słupa',
  lengthField: 'Długość słupa przy przemiataniu',
  from: 'Od częstotliwości',
  to: 'Do częstotliwości',
  practice: 'Ćwiczenie: symulacja, bez dźwięku',
  start: 'Zacznij przemiatanie',
  cancel: 'Anuluj przemiatanie',
  takes: (durationS) => `trwa ${fixed(durationS, 0)}\u00a0s`,
  takesUnknown: 'trwa —',
  sweeping: 'Trwa przemiatanie',
  soFar: 'Co było dotąd słychać. Rezonans widać jako wzniesienie, w drodze w górę i w dół.',
  noLength: 'Najpierw wpisz długość słupa.',
  noResonance:
    'Żadnego rezonansu tego słupa nie było słychać zarówno w górę, jak i w dół. Przysuń głośnik i mikrofon do wylotu albo poszerz przemiatanie.',
  order: 'Rząd',
  resonance: 'Rezonans',
  speed: 'Prędkość z niego',
  note: 'Dodaj do notatek',
  noted: 'Wynik przemiatania jest teraz w notatkach, w widoku Archiwum.',
  doubts: 'Czy temu przemiataniu można ufać?',
  inDoubt: 'Wątpliwe.',
  notProven: 'Jeszcze nie sprawdzono.',
  caution:
    'Głośnik stoi przy wylocie słupa, mikrofon obok niego. Ton zaczyna się cicho i nie przekracza ustalonego limitu. Najpierw przycisz urządzenie i nigdy nie odtwarzaj tonu w słuchawkach, które ktoś ma na uszach.',
};
