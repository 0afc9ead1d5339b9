import type { LaterWords } from '../../catalogue.ts';

export const microphone: LaterWords['microphone'] = {
  name: 'Pomoc dotycząca mikrofonu',
  heading: 'Pomoc dotycząca mikrofonu',
  lead: 'Mikrofon jest potrzebny tylko do słuchania. Bez niego możesz wpisywać długości, otwierać nagrania i używać słupa do ćwiczeń.',
  bench: 'Podczas pomiaru',
  benchHeads: { seen: 'Co widzisz', why: 'Dlaczego', toDo: 'Co zrobić' },
  administratorHeading: 'Dla administratora szkoły',
  administratorLead:
    'Ta strona potrzebuje mikrofonu bez żadnego przetwarzania głosu. Zapisuje doświadczenia w przeglądarce i niczego nie wysyła.',
  administrator: 'Administrator',
  administratorHeads: { seen: 'Gdzie', why: 'Co jest ważne', toDo: 'Ustawienie' },
  print: 'Drukuj tę stronę',
  back: 'Wróć do sprawdzania',
};

export const benchHelp: LaterWords['benchHelp'] = {
  asking: {
    seen: 'Po „Słuchaj” nic się nie dzieje',
    why: 'Przeglądarka wciąż czeka na zgodę, często w małym okienku przy adresie.',
    toDo: 'Wybierz „Zezwól”. Jeśli okienko zostało zamknięte, naciśnij „Słuchaj” jeszcze raz.',
  },
  refused: {
    seen: 'Odmówiono dostępu do mikrofonu',
    why: 'Ktoś wybrał kiedyś „Blokuj” dla tej strony, a przeglądarka to pamięta.',
    toDo: 'Naciśnij ikonę obok adresu, ustaw mikrofon na „Zezwól” i naciśnij „Słuchaj” jeszcze raz.',
  },
  insecure: {
    seen: 'Strona prosi o bezpieczny adres',
    why: 'Przeglądarki nie udostępniają mikrofonu stronom ze zwykłego http ani plikom z dysku.',
    toDo: 'Otwórz stronę pod adresem https albo pod localhost na tym komputerze.',
  },
  framed: {
    seen: 'Strona jest osadzona w innej stronie',
    why: 'Platforma edukacyjna pokazuje ją w ramce, która nie udostępnia mikrofonu.',
    toDo: 'Otwórz ją w osobnej karcie.',
  },
  missing: {
    seen: 'Nie znaleziono mikrofonu albo jest zajęty',
    why: 'Jest odłączony lub wyłączony albo używa go inny program (na przykład rozmowa).',
    toDo: 'Podłącz go, poszukaj jego wyłącznika, zakończ rozmowę i naciśnij „Słuchaj” jeszcze raz.',
  },
  doubtful: {
    seen: 'Poziom jest wątpliwy: coś może go zmieniać',
    why: 'Tryb głosowy przeglądarki, systemu lub słuchawek sam zmienia głośność.',
    toDo: 'Zdejmij słuchawki, wybierz wbudowany mikrofon, wyłącz tryb głosowy albo spróbuj innej przeglądarki.',
  },
  hopeless: {
    seen: 'Nic nie pomaga',
    why: 'Niektóre systemy udostępniają stronom tylko przetworzony dźwięk.',
    toDo: 'Nagraj przejście dowolnym dyktafonem bez trybu głosowego i otwórz plik tutaj. Zostanie przeanalizowany tak samo.',
  },
};

export const administratorHelp: LaterWords['administratorHelp'] = {
  site: {
    seen: 'Wasz serwer, jeśli jest na nim ta strona',
    why: 'Musi działać przez https, a nagłówek Permissions-Policy nie może blokować mikrofonu.',
    toDo: 'Permissions-Policy: microphone=(self)',
  },
  platform: {
    seen: 'Platforma edukacyjna',
    why: 'Ramka udostępnia mikrofon tylko wtedy, gdy jest to w niej zapisane.',
    toDo: '<iframe allow="microphone" …> albo link, który otwiera osobną kartę',
  },
  policies: {
    seen: 'Zarządzane Chrome, Edge, ChromeOS',
    why: 'Zasady zezwalają na mikrofon lub go zabraniają; można dopuścić pojedyncze witryny.',
    toDo: 'AudioCaptureAllowedUrls: adres tej strony. Działa także przy wyłączonym AudioCaptureAllowed',
  },
  windows: {
    seen: 'Windows',
    why: 'Przełącznik prywatności dla aplikacji klasycznych; „ulepszenia” sterownika same zmieniają głośność.',
    toDo: 'Ustawienia, Prywatność, Mikrofon: włączony dla przeglądarki. Ustawienia, Dźwięk, właściwości mikrofonu: ulepszenia wyłączone',
  },
  mac: {
    seen: 'macOS',
    why: 'Każdy program pyta raz; izolacja głosu to tryb mikrofonu.',
    toDo: 'Ustawienia systemowe, Prywatność i ochrona, Mikrofon: włączony dla przeglądarki. Tryb mikrofonu na pasku menu: Standardowy',
  },
  chromebook: {
    seen: 'ChromeOS',
    why: 'Jeden przełącznik dla całego urządzenia i jeden dla redukcji szumów obok głośności wejścia.',
    toDo: 'Dostęp do mikrofonu włączony; redukcja szumów i przenoszenie stylu wyłączone',
  },
  tablet: {
    seen: 'iPad i iPhone',
    why: 'Przeglądarka ma własny przełącznik; każdy program ma własny tryb mikrofonu.',
    toDo: 'Ustawienia przeglądarki: mikrofon dozwolony. Centrum sterowania podczas słuchania: tryb mikrofonu Standardowy',
  },
  linux: {
    seen: 'Linux',
    why: 'Serwer dźwięku może mieć włączone usuwanie echa.',
    toDo: 'W ustawieniach dźwięku wybrać zwykłe wejście',
  },
  network: {
    seen: 'Sieć',
    why: 'Strona niczego nie wysyła: dźwięk jest analizowany na urządzeniu i nigdy go nie opuszcza.',
    toDo: 'Nie trzeba żadnego portu, serwera ani wyjątku, poza wczytaniem strony',
  },
};
