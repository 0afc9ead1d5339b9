import type { LaterWords } from '../../catalogue.ts';
import { fixed, hertz } from '../../numbers.ts';

export const tube: LaterWords['tube'] = {
  heading: 'Rura i linijka',
  diameter: 'Średnica wewnętrzna',
  diameterHint: 'do poprawki na końcu rury i spowolnienia przez ściankę',
  otherDiameter: 'Średnica na drugim końcu',
  otherDiameterHint: 'rury, która wsuwa się w drugą, obustronnie otwartej; puste: taka sama',
  travel: 'Najdłuższy słup',
  travelHint: 'największa długość, jaką można ustawić',
  stopper: 'Co zamyka słup',
  stoppers: {
    piston: 'tłok',
    dipped: 'woda, porusza się rura',
    filled: 'woda, zmienia się jej poziom',
  },
  reading: 'Niepewność odczytu',
  readingHint: (taken) =>
    `niepewność standardowa jednej długości, razem ze znalezieniem rezonansu. Gdy puste: ${taken}.`,
  zero: 'Przesunięcie zera',
  zeroHint: 'co wskazuje linijka, gdy słup ma długość zero; odejmowane od każdego odczytu',
  caution:
    'Szklana rura może pęknąć: mocuj ją delikatnie i trzymaj wodę z dala od laptopa. Najważniejszy jest regulamin waszej pracowni.',
};

export const mouthChoice: LaterWords['mouthChoice'] = {
  legend: 'Wylot rury',
  lead: 'Słup zachowuje się tak, jakby był dłuższy od rury; o ile, zależy od wylotu (linia przerywana na rysunkach). Ta wartość liczy się razem z twoimi długościami, a one ją poprawiają, gdy są dokładniejsze.',
  notDescribed: 'Nieopisany',
  anyOf: 'Może być dowolny z poniższych.',
  ratio: (ratio, uncertainty) => `Poprawka na końcu rury: ${ratio} ± ${uncertainty} promienia.`,
  names: {
    'thin-rim': 'Cienki brzeg',
    'thick-rim': 'Gruby brzeg',
    flange: 'Kołnierz',
    obstructed: 'Coś blisko',
    ideal: 'Idealny',
  },
  shapes: {
    'thin-rim': 'Goła rura; jej ścianka jest cieńsza niż jedna dziesiąta promienia.',
    'thick-rim': 'Ścianka od jednej dziesiątej do połowy promienia.',
    flange: 'Płyta wokół wylotu albo rura kończy się w ścianie.',
    obstructed: 'Ręka, statyw lub gruby kamerton bliżej niż jedna średnica.',
    ideal: 'Jak w zadaniach: bez poprawki na końcu rury.',
  },
};

export const forks: LaterWords['forks'] = {
  heading: 'Kamertony',
  lead: 'Częstotliwość nominalna i jej niepewność standardowa, dopóki kamerton nie jest zmierzony.',
  pitch: (number) => `Kamerton ${number}`,
  uncertainty: (number) => `± kamertonu ${number}`,
  remove: 'Usuń',
  removeNamed: (number) => `Usuń kamerton ${number}`,
  notMeasured: 'Jeszcze niezmierzony (zrobisz to w widoku Sprawdź).',
  measured: (frequencyHz, standardUncertaintyHz) =>
    `Zmierzono ${fixed(frequencyHz, 2)} ± ${fixed(standardUncertaintyHz, 2)}\u00a0Hz; dopasowanie używa tej wartości.`,
  useStamp: 'Użyj wartości nominalnej',
  add: 'Dodaj kamerton',
  choose: 'wybierz częstotliwość…',
  offered: (frequencyHz) => `${hertz(frequencyHz)}\u00a0Hz`,
  others: 'Inna częstotliwość: dodaj najbliższą i zmień liczbę.',
  caution:
    'Uderzaj kamertonem o gumę lub podeszwę buta, nigdy o szkło ani twardą krawędź. Trzymaj drgający kamerton z dala od zębów i szkła.',
};

export const places: LaterWords['places'] = {
  heading: 'Miejsca i powietrze',
  lead: 'Co wskazują tam termometr, higrometr i barometr. Zostaw puste to, czego nie udało się odczytać.',
  place: (number) => `Miejsce ${number}`,
  name: 'Nazwa',
  remove: 'Usuń',
  removeNamed: (number) => `Usuń miejsce ${number}`,
  temperature: 'Temperatura powietrza',
  temperatureUncertainty: 'Jej niepewność',
  temperatureUncertaintyHint: 'powietrza w rurze: ręce i oddech je ogrzewają',
  filling: 'W rurze',
  humidity: 'Wilgotność',
  pressure: 'Ciśnienie',
  co2: 'Dwutlenek węgla',
  add: 'Dodaj miejsce',
};
