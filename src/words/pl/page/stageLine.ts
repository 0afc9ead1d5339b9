import type { FirstWords } from '../../catalogue.ts';

export const stageLine: FirstWords['stageLine'] = {
  waiting: 'Oczekiwanie na dźwięk…',
  tooFast: 'Za szybko: rezonans minął.',
  roomNoise: 'Pomiar hałasu w sali: zachowaj ciszę.',
  listenFirst: 'Naciśnij „Słuchaj”. Potem masz obie ręce wolne do kamertonu i rury.',
  openRecording: 'Otwórz nagranie kamertonu nad słupem.',
  over: 'Koniec nagrania.',
  overTypeLengths: 'Koniec nagrania. Wpisz długości znaczników.',
  strike: 'Strona słucha. Uderz w kamerton i trzymaj go przy wylocie.',
  slide: 'Słychać kamerton: przesuwaj powoli.',
  perhaps: 'Może to rezonans: przejdź przez niego jeszcze raz.',
  marked: 'Rezonans ma znacznik. Wróć, żeby go odczytać, albo przesuwaj dalej.',
};
