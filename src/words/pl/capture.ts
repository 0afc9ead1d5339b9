import type { FirstWords } from '../catalogue.ts';

export const waitsFor: FirstWords['waitsFor'] = {
  permission: 'Przeglądarka pyta, czy ta strona może użyć mikrofonu: spójrz obok adresu i wybierz „Zezwól”.',
};

export const hold: FirstWords['hold'] = {
  muted: 'Mikrofon jest wyciszony, przełącznikiem albo przez system. Włącz go: słuchanie pójdzie dalej samo.',
  suspended:
    'Przeglądarka wstrzymała dźwięk (rozmowa, ukryta strona, uśpienie). Wróć na stronę albo zacznij od nowa.',
  frozen: 'Od dwóch sekund z mikrofonu nie dochodzi dźwięk. Jeśli nie wróci, zacznij od nowa.',
};

export const noSound: FirstWords['noSound'] =
  'Z mikrofonu nie dochodzi żaden dźwięk. Poszukaj na nim przełącznika lub klawisza wyciszenia albo wybierz inny w widoku Sprawdź.';

export const captureFailure: FirstWords['captureFailure'] = {
  withoutMicrophone: (advice) =>
    `${advice} Cała reszta działa bez niego: wpisz długości ręcznie, otwórz nagranie albo użyj słupa do ćwiczeń.`,
  'recording-broken': {
    what: 'Nie udało się przeanalizować nagrania do końca.',
    advice: 'Otwórz je jeszcze raz; jeśli to nie pomoże, zapisz je jako WAV i otwórz ten plik.',
  },
  'listening-broken': {
    what: 'Strona nie mogła zacząć słuchać albo przerwała.',
    advice: 'Zacznij od nowa; jeśli to nie pomoże, sprawdź połączenie i wczytaj stronę ponownie.',
  },
  'audio-broken': {
    what: 'Dźwięk w przeglądarce przestał działać.',
    advice:
      'To, co już znaleziono, zostaje. Zacznij od nowa; jeśli to się powtórzy, wczytaj stronę ponownie.',
  },
  'insecure-context': {
    what: 'Przeglądarka udostępnia mikrofon tylko stronom o bezpiecznym adresie.',
    advice: 'Otwórz tę stronę przez https:// (albo na localhost).',
  },
  framed: {
    what: 'Ta strona jest osadzona w innej, która nie udostępnia jej mikrofonu.',
    advice: 'Otwórz ją w osobnej karcie i zacznij od nowa.',
  },
  'permission-withdrawn': {
    what: 'Zgoda na mikrofon została cofnięta.',
    advice:
      'To, co już znaleziono, zostaje. Naciśnij ikonę obok adresu, zezwól znów na mikrofon i zacznij od nowa.',
  },
  'microphone-busy': {
    what: 'Nie można otworzyć mikrofonu: może używa go inny program albo inna karta.',
    advice: 'Zamknij to (rozmowę, dyktafon) i zacznij od nowa.',
  },
  'microphone-lost': {
    what: 'Mikrofon został odłączony albo wyłączony.',
    advice: 'To, co już znaleziono, zostaje. Podłącz go i zacznij od nowa.',
  },
  'uneven-sound': {
    what: 'Dźwięk dochodzi szybciej albo wolniej, niż podaje przeglądarka, albo komputer nie nadąża: czasy i częstotliwości byłyby błędne.',
    advice:
      'To, co już znaleziono, zostaje. Zamknij inne programy, odłącz i podłącz mikrofon i zacznij od nowa.',
  },
  closed: {
    what: 'Pytanie o mikrofon zamknięto bez odpowiedzi.',
    advice: 'Zacznij od nowa i wybierz „Zezwól”.',
  },
  refused: {
    what: 'Odmówiono dostępu do mikrofonu.',
    advice:
      'Naciśnij ikonę obok adresu, zezwól tej stronie na mikrofon i zacznij od nowa. Jeśli nie ma tam na co zezwolić, wyłączył go administrator szkoły.',
  },
  system: {
    what: 'Ustawienia prywatności komputera nie pozwalają przeglądarce używać mikrofonu.',
    advice: 'Zezwól tam na niego (prywatność, mikrofon) i zacznij od nowa.',
  },
  policy: {
    what: 'Zasady tej witryny albo szkoły nie pozwalają stronom używać mikrofonu.',
    advice: 'Poproś administratora, żeby na niego zezwolił.',
  },
  'none-given': {
    what: 'Ta przeglądarka nie pozwala stronom używać mikrofonu.',
    advice: 'Użyj aktualnej wersji Chrome, Edge, Firefox lub Safari.',
  },
  'none-found': {
    what: 'Nie znaleziono mikrofonu.',
    advice: 'Podłącz go albo włącz i zacznij od nowa.',
  },
  'not-there': {
    what: 'Wybranego mikrofonu już nie ma.',
    advice: 'Wybierz inny i zacznij od nowa.',
  },
};
