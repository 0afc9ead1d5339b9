import type { LaterWords } from '../catalogue.ts';
import { plural } from './grammar.ts';

export const solverWarning: LaterWords['solverWarning'] = {
  noMarks: 'Żaden znacznik nie ma jeszcze przydatnej długości. Zaznacz rezonans i odczytaj jego długość.',
  noOrders: 'Żaden wybór rzędów nie pasuje do tych znaczników.',
  contradiction: 'Przy tych rzędach dłuższy słup miałby krótszą falę. Sprawdź długości i ustawione rzędy.',
  outlier: (mark, cause) => `${mark} nie pasuje i nie liczy się w dopasowaniu. ${cause}`,
  inconsistent: (marks) =>
    `Znaczniki są ze sobą sprzeczne i nie da się stwierdzić, który z tych jest błędny: ${marks}. Powtórz je.`,
  bracketWide: (mark) => `Dwie długości są zbyt daleko od siebie, żeby dobrze wyznaczyć rezonans: ${mark}.`,
  nothingFits:
    'Większość tych długości nie pasuje do żadnego rezonansu przy jednej prędkości i jednej poprawce na końcu rury. Sprawdź jednostkę długości, kamerton i końce rury, zanim użyjesz wyniku.',
  nothingFitsDiameter:
    'Większość tych długości nie pasuje do żadnego rezonansu przy jednej prędkości i jednej poprawce na końcu rury. Sprawdź jednostkę długości i średnicy, kamerton i końce rury, zanim użyjesz wyniku.',
  columnType: {
    closed:
      'Te długości nie pasują do słupa obustronnie otwartego, ale pasowałyby do jednostronnie zamkniętego. Sprawdź, które końce były otwarte.',
    open: 'Te długości nie pasują do słupa jednostronnie zamkniętego, ale pasowałyby do obustronnie otwartego. Sprawdź, które końce były otwarte.',
  },
  lengthUnit: (unit) =>
    `Te długości nie pasują w tej postaci, ale pasowałyby, gdyby były w ${unit}. Sprawdź jednostkę.`,
  orderAmbiguous: (marks) =>
    `Pasuje więcej niż jeden wybór rzędów: ${marks}. Zaznacz sąsiedni rezonans albo ustaw rząd.`,
  orderOf: (mark, order, percent, rival) =>
    `${mark}: rząd ${order} (${percent}\u00a0%)${rival === null ? '' : `, ewentualnie ${rival}`}`,
  orderDoubtful: (marks) =>
    `Ustawiony rząd nie pasuje do powietrza w tej rurze: ${marks}. Zostaw rząd na „auto” albo sprawdź kamerton.`,
  skippedOrders: (gaps) => `Tu brakuje znacznika: ${gaps}. Czy jakiś rezonans został przeoczony?`,
  gap: {
    closed: (orders, hertz) => `rząd ${orders} (${hertz}\u00a0Hz, zamknięty)`,
    open: (orders, hertz) => `rząd ${orders} (${hertz}\u00a0Hz, otwarty)`,
  },
  otherExplanation: (others, percentAsNoted) =>
    `Te liczby mogą też znaczyć coś innego: ${others}; tak, jak zanotowano: ${percentAsNoted}\u00a0%. Sprawdź kamerton, jednostkę i gaz albo zaznacz pierwszy rezonans.`,
  odds: (explanation, percent) => `${explanation} (${percent}\u00a0%)`,
  otherUnit: (unit) => `długości w ${unit}`,
  otherFork: (hertz) => `kamerton ${hertz}\u00a0Hz`,
  otherGas: (gas) => `${gas} w rurze`,
  exactRepeats: (copies) =>
    `${plural(copies, 'Jeden znacznik jest', `${copies} znaczniki są`, `${copies} znaczników jest`)} pod każdym względem ${plural(copies, 'taki sam jak inny i nie liczy', 'takie same jak inne i nie liczą', 'takich samych jak inne i nie liczy')} się ponownie. Wklejono dwa razy? Pomiń ${plural(copies, 'go', 'je', 'je')}. Odczytano dwa razy? Podaj kiedy w tabeli, w kolumnie made_at.`,
  forksAlike: (forks) =>
    `${forks} liczą się jako jeden kamerton, zapisany na dwa sposoby. Jeśli to dwa kamertony, zmierz ich częstotliwość i podaj fork_uncertainty_hz.`,
  hertz: (hertz) => `${hertz}\u00a0Hz`,
  tubeTooWide: (millimetres, hertz, ka) =>
    `Rura o średnicy ${millimetres}\u00a0mm jest za szeroka dla ${hertz}\u00a0Hz: dźwięk nie jest w niej już falą płaską (ka = ${ka}), a przewidywana poprawka na końcu rury nie obowiązuje. Weź węższą rurę albo niższy kamerton.`,
  allUnchecked:
    'Nic w tych znacznikach nie zdradziłoby błędu odczytu: dwie długości zawsze pasują. Pokazałby go trzeci rezonans.',
  unchecked: (marks) =>
    `Nic tutaj nie zdradziłoby błędu odczytu: ${marks}. Zaznacz jeszcze jeden rezonans albo odczytaj długość ponownie.`,
  speedOfAir: {
    cold: (celsius) =>
      `To prędkość dźwięku w powietrzu o temperaturze ${celsius}\u00a0°C. Czy w sali było tak zimno? Jeśli nie, sprawdź częstotliwość kamertonu, jednostkę długości i gaz.`,
    warm: (celsius) =>
      `To prędkość dźwięku w powietrzu o temperaturze ${celsius}\u00a0°C. Czy w sali było tak ciepło? Jeśli nie, sprawdź częstotliwość kamertonu, jednostkę długości i gaz.`,
  },
  speedOfNoAir: {
    cold: 'Powietrze nie bywa tak zimne, jak wymagałaby ta prędkość. Sprawdź częstotliwość kamertonu, jednostkę długości i gaz.',
    warm: 'Powietrze nie bywa tak ciepłe, jak wymagałaby ta prędkość. Sprawdź częstotliwość kamertonu, jednostkę długości i gaz.',
  },
  scatter: (factor) =>
    `Rozrzut długości jest ${factor} raza większy, niż podano lub założono; niepewność wyniku została zwiększona.`,
  endImplausible: (millimetres) =>
    `Poprawka na końcu rury wychodzi ${millimetres}\u00a0mm. Sprawdź zero linijki i końce rury.`,
  endImplausibleInRadii: (millimetres, radii, usualRadii) =>
    `Poprawka na końcu rury wychodzi ${millimetres}\u00a0mm, czyli ${radii} promienia; zwykle to około ${usualRadii} promienia. Sprawdź zero linijki, średnicę i końce rury.`,
  speedImplausible: (mps, lowest, highest) =>
    `${mps}\u00a0m/s leży poza zakresem od ${lowest} do ${highest}\u00a0m/s dla powietrza. Sprawdź częstotliwość kamertonu i rzędy.`,
  aboveTheory: (mps) =>
    `Wynik jest o ${mps}\u00a0m/s większy od prędkości przewidywanej, bardziej niż pozwalają obie niepewności. Sprawdź, co jest przy wylocie, długości i zero linijki, a potem termometr i częstotliwość kamertonu.`,
  belowTheory: (mps) =>
    `Wynik jest o ${mps}\u00a0m/s mniejszy od prędkości przewidywanej, bardziej niż pozwalają obie niepewności. Sprawdź, co jest przy wylocie, długości i zero linijki, a potem termometr i częstotliwość kamertonu.`,
  agreeingFork: (hertz) => `Kamerton ${hertz}\u00a0Hz by się zgadzał: czy to był ten?`,
  implausible: 'Prędkość i poprawka na końcu rury są razem nietypowe dla powietrza w rurze.',
  tooFewMarks: 'Jeden znacznik nie rozdzieli poprawki na końcu rury i długości fali. Zaznacz drugi rezonans.',
  endFromTheory:
    'Same znaczniki nie wyznaczają dobrze poprawki na końcu rury. Użyto tego, co wiadomo o wylocie rury, z jego niepewnością.',
  endUnknown: (expected, giveOrTake) =>
    `Znaczniki nie wyznaczają poprawki na końcu rury, a średnicy nie podano. Przyjęto ${expected} ± ${giveOrTake}\u00a0mm, jak w typowych rurach.`,
  noDiameter: (lowestPercent, highestPercent) =>
    `Nie podano średnicy, więc nie wiadomo, jak bardzo ścianki spowalniają falę (od ${lowestPercent} do ${highestPercent}\u00a0%). Nie wprowadzono na to poprawki; uwzględnia to niepewność.`,
  someDiametersMissing: 'Tam, gdzie nie podano średnicy, użyto średniej z pozostałych.',
  someTemperaturesMissing: 'Tam, gdzie nie podano temperatury powietrza, użyto średniej z pozostałych.',
  noTemperature: 'Nie podano temperatury powietrza, więc nie można porównać prędkości z przewidywaną.',
  ifAir: (celsius, giveOrTake) =>
    `Jeśli gazem jest powietrze, ta prędkość odpowiada temperaturze ${celsius} ± ${giveOrTake}\u00a0°C.`,
  airBeyondFormula:
    'To powietrze jest poza zakresem od 0 do 30\u00a0°C i od 750 do 1020\u00a0hPa, w którym sprawdzono wzór na prędkość przewidywaną; jej niepewność została zwiększona.',
};

export const unusableMark: LaterWords['unusableMark'] = {
  outOfRange: {
    frequencyHz: (mark, lowest, highest, value) =>
      `${mark} się nie liczy: częstotliwość musi wynosić od ${lowest} do ${highest}\u00a0Hz, a wynosi ${value}\u00a0Hz.`,
    frequencyStandardUncertaintyHz: (mark, lowest, highest, value) =>
      `${mark} się nie liczy: niepewność częstotliwości musi wynosić od ${lowest} do ${highest}\u00a0Hz, a wynosi ${value}\u00a0Hz.`,
    lengthM: (mark, lowest, highest, value) =>
      `${mark} się nie liczy: długość musi wynosić od ${lowest} do ${highest}\u00a0m, a wynosi ${value}\u00a0m.`,
    otherLengthM: (mark, lowest, highest, value) =>
      `${mark} się nie liczy: druga długość musi wynosić od ${lowest} do ${highest}\u00a0m, a wynosi ${value}\u00a0m.`,
    lengthStandardUncertaintyM: (mark, lowest, highest, value) =>
      `${mark} się nie liczy: niepewność długości musi wynosić od ${lowest} do ${highest}\u00a0m, a wynosi ${value}\u00a0m.`,
    radiusM: (mark, lowest, highest, value) =>
      `${mark} się nie liczy: promień rury musi wynosić od ${lowest} do ${highest}\u00a0m, a wynosi ${value}\u00a0m.`,
    otherRadiusM: (mark, lowest, highest, value) =>
      `${mark} się nie liczy: drugi promień rury musi wynosić od ${lowest} do ${highest}\u00a0m, a wynosi ${value}\u00a0m.`,
    temperatureC: (mark, lowest, highest, value) =>
      `${mark} się nie liczy: temperatura powietrza musi wynosić od ${lowest} do ${highest}\u00a0°C, a wynosi ${value}\u00a0°C.`,
    humidityPct: (mark, lowest, highest, value) =>
      `${mark} się nie liczy: wilgotność powietrza musi wynosić od ${lowest} do ${highest}\u00a0%, a wynosi ${value}\u00a0%.`,
    pressurePa: (mark, lowest, highest, value) =>
      `${mark} się nie liczy: ciśnienie powietrza musi wynosić od ${lowest} do ${highest} Pa, a wynosi ${value} Pa.`,
  },
  anotherGas: (mark, gas, firstGas) =>
    `${mark} się nie liczy: jego gaz to ${gas}, a gaz pierwszego to ${firstGas}. Oblicz każdy gaz osobno.`,
  orderNotWhole: (mark, order) =>
    `${mark} się nie liczy: rząd musi być liczbą całkowitą większą od 0, a wynosi ${order}.`,
  air: (mark) =>
    `${mark} się nie liczy: temperatura, wilgotność i ciśnienie powietrza nie mogą być wszystkie prawdziwe.`,
};
