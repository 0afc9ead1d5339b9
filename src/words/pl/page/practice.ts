import type { FirstWords } from '../../catalogue.ts';

export const practice: FirstWords['practice'] = {
  heading: 'Słup do ćwiczeń',
  strike: 'Uderz w kamerton',
  forkAtMouth: 'Kamerton przy wylocie',
  damp: 'Wytłum go',
  shorter: 'O milimetr krócej',
  longer: 'O milimetr dłużej',
  shorterFine: 'O jedną piątą milimetra krócej',
  longerFine: 'O jedną piątą milimetra dłużej',
  rule: 'Lupa: linijka przy tłoku',
  room: 'Sala',
  rooms: { quiet: 'cicha', talk: 'trochę rozmów', 'full class': 'pełna klasa' },
  instruments: (celsius, humidityPercent, diameterMm) =>
    `Przyrządy: ${celsius}\u00a0°C, wilgotność ${humidityPercent}\u00a0%, średnica wewnętrzna rury ${diameterMm}\u00a0mm`,
  instrumentsApart: (celsius, humidityPercent, diameterMm, place) =>
    `Przyrządy: ${celsius}\u00a0°C, wilgotność ${humidityPercent}\u00a0%, średnica wewnętrzna rury ${diameterMm}\u00a0mm. Wybrane miejsce to inna sala, więc odczyty zapiszą się pod osobnym miejscem: „${place}”`,
  note: 'Zanotuj te odczyty',
  noted: 'Odczyty są zanotowane w widoku Układ.',
  notedApart: (place) =>
    `Odczyty są zanotowane w widoku Układ, pod osobnym miejscem: „${place}”. To, co teraz mierzysz, należy do tego miejsca.`,
  otherTube: (diameterMm, practiceDiameterMm) =>
    `Rura do ćwiczeń ma średnicę ${practiceDiameterMm}\u00a0mm, a rura tego doświadczenia ${diameterMm}\u00a0mm. Żeby ćwiczyć, zacznij nowe doświadczenie w widoku Archiwum.`,
};

export const guide: FirstWords['guide'] = {
  heading: 'Przewodnik',
  count: (done, all) => `Przewodnik, ${done} z ${all}:`,
  says: {
    listen: 'Naciśnij „Słuchaj” i chwilę poczekaj.',
    strike: 'Uderz w kamerton i trzymaj go przy wylocie.',
    slide: 'Przeciągnij uchwyt powoli do samego końca: każdy błysk to znacznik.',
    slideAgain: 'Znaleziono za mało: uderz jeszcze raz w kamerton i przesuwaj wolniej.',
    back: 'Wracaj, jak pokazuje rysunek, aż pojawi się „Tutaj”.',
    type: 'Odczytaj długość pod lupą i wpisz ją nad rurą.',
    rest: 'Wróć tak samo do następnego znacznika; odczytaj i wpisz jego długość.',
    read: 'Naciśnij „Zanotuj te odczyty” obok przycisków kamertonu.',
    faintSliding: 'Kamerton cichnie: uderz w niego jeszcze raz i przesuwaj dalej.',
    faint: 'Kamerton cichnie: uderz w niego jeszcze raz. Droga powrotna zostaje.',
  },
  done: 'Gotowe: prędkość jest u góry. Im więcej znaczników, tym mniejsza niepewność.',
  showTruth: 'Pokaż prawdziwe wartości',
  hideTruth: 'Ukryj prawdziwe wartości',
};
