import type { LaterWords } from '../../catalogue.ts';
import { dayAndTime } from '../../dates.ts';
import { counted, plural } from '../grammar.ts';

export const report: LaterWords['report'] = {
  title: 'Prędkość dźwięku w słupie powietrza',
  fileTitle: 'Sprawozdanie słup powietrza',
  dates: (createdAt, changedAt) =>
    `Początek ${dayAndTime(createdAt)}, ostatnia zmiana ${dayAndTime(changedAt)} (UTC)`,
  names: 'Imiona i nazwiska',
  classAndDate: 'Klasa i data',
  date: 'Data',
  group: (group) => `Grupa: ${group}`,
  className: (name) => `Klasa: ${name}`,
  questions: 'Pytania',
  task: 'Zadanie',
  note: 'Notatka',
  notWorked: (places) =>
    `Nie wydrukowano wykresów, obliczeń i budżetu dla ${counted(places, 'kolejnego miejsca', 'kolejnych miejsc', 'kolejnych miejsc')}. „Obliczenia” na stronie pokazują je dla wybranego miejsca.`,
  cautions: 'Ostrożnie',
  cautionList: [
    'Uderzaj kamertonem o gumę lub podeszwę buta, nigdy o szkło ani twardą krawędź.',
    'Trzymaj drgający kamerton z dala od zębów i szkła.',
    'Szklana rura może pęknąć: mocuj ją delikatnie. Trzymaj wodę z dala od urządzeń elektrycznych.',
    'Odtwarzane dźwięki zaczynają się cicho. Najważniejszy jest regulamin waszej pracowni.',
  ],
  discussion: 'Dyskusja',
};

export const resultPart: LaterWords['resultPart'] = {
  heading: 'Wynik: prędkość dźwięku w swobodnym powietrzu',
  own: 'c = ( ________ ± ________ ) m/s',
  speed: (speed) =>
    speed === null ? 'Nie można jeszcze podać prędkości.' : `c = (${speed.value} ± ${speed.uncertainty}) m/s`,
  none: 'Nie ma jeszcze znacznika z długością.',
  notPrinted: (places) =>
    `${counted(places, 'kolejne miejsce jest', 'kolejne miejsca są', 'kolejnych miejsc jest')} w tabeli „Wynik” w Archiwum.`,
};

export const placePart: LaterWords['placePart'] = {
  plots: (place) => (place === null ? 'Wykresy' : `Wykresy, ${place}`),
  working: (place) => (place === null ? 'Obliczenia' : `Obliczenia, ${place}`),
  budget: (place) => (place === null ? 'Budżet niepewności' : `Budżet niepewności, ${place}`),
  budgetTable: 'Wiersze budżetu',
};

export const warningsPart: LaterWords['warningsPart'] = {
  heading: 'Ostrzeżenia',
  none: 'Brak.',
  ofPlace: (place, warning) => `${place}: ${warning}`,
  notPrinted: (warnings) =>
    `Nie wydrukowano ${counted(warnings, 'kolejnego ostrzeżenia', 'kolejnych ostrzeżeń', 'kolejnych ostrzeżeń')}.`,
};

export const apparatusPart: LaterWords['apparatusPart'] = {
  heading: 'Układ',
  fork: 'Kamerton',
  forksLeft: 'Pozostałe kamertony',
  tube: 'Rura',
  rule: 'Linijka',
  air: (place) => `Powietrze (${place})`,
  placesLeft: 'Pozostałe miejsca',
  left: (count) => `${count}, bez wydruku; są w tabeli „Znaczniki” w Archiwum`,
};

export const apparatusFacts: LaterWords['apparatusFacts'] = {
  stamped: (hz, uncertaintyHz) =>
    `nominalnie ${hz}\u00a0Hz ± ${uncertaintyHz}\u00a0Hz (niepewność standardowa)`,
  measured: (stampedHz, measuredHz, uncertaintyHz) =>
    `nominalnie ${stampedHz}\u00a0Hz, zmierzono ${measuredHz} ± ${uncertaintyHz}\u00a0Hz (niepewność standardowa); liczy się częstotliwość zmierzona`,
  noDiameter: 'średnica wewnętrzna niezmierzona',
  diameter: (mm) => `średnica wewnętrzna ${mm}\u00a0mm`,
  otherDiameter: (mm) => `${mm}\u00a0mm na drugim otwartym końcu`,
  reading: (mm) => `jeden odczyt ± ${mm}\u00a0mm (niepewność standardowa, razem ze znalezieniem rezonansu)`,
  readingNotStated: (taken) => `nie podano niepewności odczytu: ${taken}`,
  zeroOffset: (mm) => `przesunięcie zera ${mm}\u00a0mm`,
  temperature: (celsius, uncertainty) => `${celsius} ± ${uncertainty}\u00a0°C (niepewność standardowa)`,
  noTemperature: 'temperatury nie odczytano',
  humidity: (percent) => `wilgotność ${percent}\u00a0%`,
  noHumidity: 'wilgotności nie odczytano',
  pressure: (hPa) => `${hPa}\u00a0hPa`,
  noPressure: 'ciśnienia nie odczytano',
  co2: (ppm) => `${ppm}\u00a0ppm dwutlenku węgla`,
};

export const methodPart: LaterWords['methodPart'] = {
  heading: 'Metoda',
  opening:
    'Przy wylocie słupa powietrza trzyma się drgający kamerton, a długość słupa zmienia się, aż słup zacznie rezonować: dźwięk o częstotliwości kamertonu staje się wtedy głośniejszy.',
  heard: (heard, marks, where) =>
    `Znaczniki: ${marks}, w tym ${heard} ${plural(heard, 'znaleziony', 'znalezione', 'znalezionych')} przez słuchanie tylko częstotliwości kamertonu, ${where}, i porównanie z hałasem w sali w tym samym wąskim paśmie; potem odczytano długość na linijce.`,
  sources: {
    microphone: 'przez mikrofon',
    recording: 'w nagraniu',
    practice: 'na symulowanym słupie do ćwiczeń',
  },
  byHand: (byHand, marks) =>
    `Znaczniki: ${marks}, w tym ${byHand} ${plural(byHand, 'dodany', 'dodane', 'dodanych')} ręcznie.`,
  bracketed: (marks) =>
    `Gdzie znacznik ma dwie długości (${marks}), rezonans leży między nimi i liczy się środek.`,
  theory:
    'Słup jednostronnie zamknięty rezonuje, gdy jego długość jest nieparzystą wielokrotnością ćwierci długości fali, a obustronnie otwarty, gdy jest całkowitą wielokrotnością połowy długości fali, w obu przypadkach po odjęciu poprawki na każdym otwartym końcu. Prędkość to długość fali razy częstotliwość. Jedno ważone dopasowanie obejmuje wszystkie znaczniki, każdy ze swoją niepewnością. Jeśli średnica rury jest znana, uwzględnia się spowolnienie fali przez ściankę.',
};

export const marksPart: LaterWords['marksPart'] = {
  heading: 'Znaczniki',
  none: 'Jeszcze żadnych.',
  table: 'Tabela znaczników',
  mark: 'Znacznik',
  column: 'Kamerton i słup',
  length: 'Długość, cm',
  order: 'Rząd',
  residual: 'Odchylenie, mm',
  remarks: 'Uwagi',
  nothing: '—',
  number: (number, isAgain) => (isAgain ? `${number} ponownie` : `${number}`),
  between: (oneCm, otherCm) => `${oneCm} do ${otherCm}`,
  repeats: (mark) => `ponowne przejście przez rezonans znacznika ${mark}`,
  leftOut: 'pominięty w dopasowaniu',
  outlier: (cause) => `wartość odstająca: ${cause}`,
  below: (shown, all) =>
    shown === all
      ? 'Długości podano tak, jak wskazuje je linijka.'
      : `Długości podano tak, jak wskazuje je linijka. Wydrukowano pierwsze ${shown} z ${all} znaczników; wszystkie są w tabelach w Archiwum.`,
};

export const comparisonPart: LaterWords['comparisonPart'] = {
  heading: 'Porównanie z teorią',
  headingHidden: 'Porównanie',
  hidden: 'Ta lekcja ukrywa prędkość przewidywaną.',
  theory:
    'Prędkość przewidywana to prędkość dźwięku w powietrzu o zanotowanej temperaturze, wilgotności i ciśnieniu (Cramer 1993); w innym gazie to √(γRT/M).',
  place: (place, difference) =>
    difference === null
      ? `${place}: nie zanotowano temperatury powietrza, więc nie da się przewidzieć prędkości.`
      : `${place}: prędkość zmierzona minus przewidywana: ${difference}.`,
  pairsLeft: (pairs) =>
    `Nie wydrukowano ${counted(pairs, 'kolejnej pary miejsc', 'kolejnych par miejsc', 'kolejnych par miejsc')}. „Porównaj” na stronie pokazuje różnicę między dowolnymi dwoma.`,
};
