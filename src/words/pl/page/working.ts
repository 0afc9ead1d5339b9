import type { LaterWords } from '../../catalogue.ts';
import { fixed } from '../../numbers.ts';

export const working: LaterWords['working'] = {
  heading: 'Obliczenia',
  empty: 'Każdy krok pojawi się tu ze swoimi liczbami, gdy tylko jakiś znacznik będzie miał długość.',
  lead: 'Każdy krok ze swoimi liczbami, żeby dało się go przeliczyć ręcznie.',
  letters: {
    L: 'długość odczytana z linijki, po odjęciu przesunięcia zera',
    n: 'rząd rezonansu',
    f: 'częstotliwość kamertonu',
    λ: 'długość fali',
    e: 'poprawka na końcu rury',
    ℓ: 'długość słupa powietrza z poprawką na końcu rury',
    v: 'prędkość dźwięku w rurze',
    w: 'o jaką część prędkość maleje przez ścianki',
    c: 'prędkość dźwięku w swobodnym powietrzu',
    'χ²': 'suma kwadratów odchyleń, każde podzielone przez swoją niepewność',
    a: 'o jaką część połowy szerokości miejsce może leżeć obok rezonansu',
    b: 'połowa szerokości rezonansu',
    q: 'wzrost ponad sam kamerton, jako stosunek amplitud',
    u: 'niepewność standardowa',
    U: 'niepewność rozszerzona, k·u',
    t: 'temperatura powietrza',
    h: 'wilgotność względna',
    p: 'ciśnienie powietrza',
    γ: 'stosunek obu ciepeł właściwych gazu',
    R: 'stała gazowa',
    T: 'temperatura bezwzględna',
    M: 'masa molowa gazu',
    Δ: 'różnica obu prędkości',
  },
};

export const budget: LaterWords['budget'] = {
  region: 'Budżet niepewności',
  heading: 'Skąd bierze się niepewność',
  table: 'Wiersze budżetu',
};

export const fit: LaterWords['fit'] = {
  heading: 'Dopasowanie',
  lead: 'Nachylenie to prędkość w rurze; prosta zaczyna się tyle poniżej zera, ile wynosi poprawka na końcu rury (przy słupie otwartym: dwie poprawki).',
};

export const nextMarks: LaterWords['nextMarks'] = {
  heading: 'Co dalej',
  lead: 'Znaczniki, które najbardziej zmniejszyłyby niepewność, przy kamertonach, które masz.',
  none: 'Najpierw zaznacz jeden rezonans i wpisz jego długość.',
};

export const circle: LaterWords['circle'] = {
  heading: 'Dlaczego najgłośniejsze miejsce to nie rezonans',
  lead: 'Mikrofon słyszy dwa dźwięki o tej samej częstotliwości: kamertonu i słupa. Gdy długość przechodzi przez rezonans, faza dźwięku słupa się obraca, więc suma obu biegnie po okręgu. Rezonans leży naprzeciw dźwięku kamertonu; najgłośniejsze miejsce to punkt najdalszy od zera.',
  mark: 'Rezonans',
  own: (name) => `Tak wygląda usłyszany okrąg: ${name}.`,
  example:
    'Przykład, jeszcze nie twój: dźwięk słupa jest 1,5 raza silniejszy od dźwięku kamertonu i wyprzedza go o 60°. Gdy ta strona słucha, przejdź powoli przez rezonans: przy jego znaczniku zobaczysz własny okrąg.',
  tooLong: {
    inHalfWidths: (halfWidths, louderDb) =>
      `Najgłośniejsze miejsce leży ${fixed(halfWidths, 2)} połowy szerokości od rezonansu i jest o ${louderDb}\u00a0dB głośniejsze: słup odczytany w tym miejscu jest za długi.`,
    inMillimetres: (halfWidths, mm, louderDb) =>
      `Najgłośniejsze miejsce leży ${fixed(halfWidths, 2)} połowy szerokości (${mm}\u00a0mm) od rezonansu i jest o ${louderDb}\u00a0dB głośniejsze: słup odczytany w tym miejscu jest za długi.`,
  },
  tooShort: {
    inHalfWidths: (halfWidths, louderDb) =>
      `Najgłośniejsze miejsce leży ${fixed(halfWidths, 2)} połowy szerokości od rezonansu i jest o ${louderDb}\u00a0dB głośniejsze: słup odczytany w tym miejscu jest za krótki.`,
    inMillimetres: (halfWidths, mm, louderDb) =>
      `Najgłośniejsze miejsce leży ${fixed(halfWidths, 2)} połowy szerokości (${mm}\u00a0mm) od rezonansu i jest o ${louderDb}\u00a0dB głośniejsze: słup odczytany w tym miejscu jest za krótki.`,
  },
  alike: 'Tutaj najgłośniejsze miejsce i rezonans są tym samym: oba dźwięki są w zgodnej fazie.',
  nowhere: 'Tutaj dźwięk słupa tylko osłabia dźwięk kamertonu: żadne miejsce nie jest najgłośniejsze.',
  noMillimetres: 'Także w milimetrach, gdy znane są średnica rury i rząd rezonansu.',
  stays:
    'Dopóki kamerton, ręka i mikrofon pozostają bez zmian, przesunięcie jest przy każdym rezonansie w tę samą stronę: powtarzanie pomiaru go nie uśredni. Unikniesz go, jeśli odczytasz długość, gdy ta strona pokazuje „Tutaj”.',
};
