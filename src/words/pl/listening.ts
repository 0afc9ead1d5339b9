import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

/** "1 raz", "2 razy", "5 razy". */
const times = (count: number): string => counted(count, 'raz', 'razy', 'razy');

export const listening: FirstWords['listening'] = {
  between: (fromS, toS, said) => `Między ${fromS} a ${toS} s: ${said}`,
  slower: 'Przesuwaj wolniej: o szerokość dłoni w cztery sekundy.',
  noFork: (toleranceHz, nominalHz) =>
    `Nie było słychać stałego tonu o częstotliwości ${nominalHz} ± ${toleranceHz} Hz: sprawdź częstotliwość wybitą na kamertonie, uderz mocniej albo trzymaj kamerton bliżej mikrofonu.`,
  otherFork: (toleranceHz, nominalHz, otherHz) =>
    `Nie było słychać stałego tonu o częstotliwości ${nominalHz} ± ${toleranceHz} Hz, ale był ton około ${otherHz} Hz: sprawdź częstotliwość wybitą na kamertonie i wybraną na tej stronie. Jeśli to właściwy kamerton, jest daleko od wybitej wartości: obciążony, wyszczerbiony albo luźny.`,
  offStamp: (measuredHz, offsetHz, isAbove) =>
    `Kamerton brzmi z częstotliwością ${measuredHz} Hz, ${offsetHz} Hz ${isAbove ? 'powyżej' : 'poniżej'} wybitej wartości: użyj częstotliwości zmierzonej i sprawdź, czy kamerton nie jest wyszczerbiony.`,
  beating: (beatHz, isAbove) =>
    `Brzmi inny kamerton o prawie tej samej częstotliwości, ${beatHz} Hz ${isAbove ? 'powyżej' : 'poniżej'} twojego: powstają dudnienia o częstotliwości ${beatHz} Hz. Poproś, żeby go wytłumić, albo poczekaj, aż ucichnie.`,
  forkTurned: (turns, fromS) =>
    `Od ${fromS} s ton zanikł i wrócił odwrócony ${times(turns)}, jak przy obracaniu kamertonu wokół trzonka: trzymaj jedno ramię stale zwrócone do wylotu.`,
  tooFast: (halfPowerS, slower) =>
    `Rezonanse minęły w ${halfPowerS} s, za szybko: słup nie zdążył osiągnąć pełnej głośności. ${slower}`,
  tooFastAt: (timeS, slower) =>
    `W ${timeS} s rezonans minął za szybko: słup nie zdążył osiągnąć pełnej głośności i może brakować znacznika. ${slower}`,
  clipping: (count) =>
    `Sygnał wejściowy był za głośny ${times(count)}: odsuń mikrofon albo zmniejsz jego wzmocnienie.`,
  overdriven: (percent, count) =>
    `Dźwięk został obcięty ${times(count)} na ${percent} % pełnej skali, zanim doszedł do nagrywania: odsuń mikrofon albo zmniejsz jego wzmocnienie.`,
  tooFaint: (percent) =>
    `Najgłośniejsza chwila sięga tylko ${percent} % pełnej skali: zwiększ wzmocnienie mikrofonu albo przysuń go do wylotu słupa.`,
  gainPumping:
    'W sali robi się ciszej, gdy kamerton jest głośny: automatyczne wzmocnienie zmienia głośność i poziomów nie można porównać. Wyłącz automatyczne wzmocnienie, tłumienie szumu i usuwanie echa mikrofonu.',
  tooShort:
    'Nagranie trwa mniej niż sekundę: za krótko, żeby znaleźć w nim kamerton. Nagraj całe przesunięcie.',
  silent: 'Nie dochodzi żaden dźwięk: mikrofon jest wyciszony albo wybrano niewłaściwy.',
  gap: (losses, timeS) =>
    `Dźwięk zgubiono ${times(losses)}, pierwszy raz w ${timeS} s: tam nie ma znaczników. Zamknij inne programy i przesuń tam jeszcze raz.`,
  dropouts: (count) =>
    `Dźwięk urwał się i wrócił ${times(count)}: poziomy są tam za niskie. Zamknij inne programy albo użyj mikrofonu z kablem.`,
  dropoutsFrom: (count, timeS) =>
    `Dźwięk urwał się i wrócił ${times(count)}, pierwszy raz w ${timeS} s: poziomy są tam za niskie. Zamknij inne programy albo użyj mikrofonu z kablem.`,
  narrowBand: (edgeKhz) =>
    `Powyżej ${edgeKhz} kHz nie ma nic: to typowe dla mowy daleko od mikrofonu, słuchawek w trybie rozmowy albo nagrania z telefonu. Częstotliwość kamertonu jest niższa i ją słychać. Jeśli poziomy wyglądają dziwnie, zrób test wzmocnienia albo wybierz mikrofon samego urządzenia.`,
  highBandMissing: (edgeKhz) =>
    `Powyżej ${edgeKhz} kHz nie ma nic: to typowe dla cichej sali, tłumienia szumu albo mocno skompresowanego pliku. Częstotliwość kamertonu jest niższa i ją słychać. Jeśli poziomy wyglądają dziwnie, zrób test wzmocnienia; nagrywaj jako WAV, jeśli możesz.`,
  floorFell: (fallDb) =>
    `Cisza między dźwiękami spadła o ${fallDb} dB poniżej początkowego hałasu w sali: albo w sali ucichło, albo włączyło się tłumienie szumu. Przy mikrofonie zrób test wzmocnienia, zanim zaufasz poziomowi.`,
  offset: (percent) =>
    `Dźwięk ma składową stałą ${percent} % pełnej skali: to wada karty dźwiękowej albo jej wtyczki. Poziomy przy częstotliwości kamertonu są mimo to dobre; jeśli dźwięk jest obcinany, spróbuj innego wejścia.`,
  hum: (mainsHz, levelDb) =>
    `Przydźwięk sieci ${mainsHz} Hz jest głośny (${levelDb} dB): odłącz ładowarkę albo odsuń się od zasilaczy i lamp.`,
  cutOff: 'Brakuje końca tego pliku: został ucięty. To, co jest, zostało użyte.',
};

export const unheardFrequency: FirstWords['unheardFrequency'] = {
  sampleRate: {
    what: (sampleRateHz, lowestHz, highestHz) =>
      `Ten dźwięk ma częstotliwość próbkowania ${sampleRateHz} Hz; ta strona może użyć od ${lowestHz} do ${highestHz} Hz.`,
    advice: (usualRates) => `Nagrywaj z częstotliwością ${usualRates} Hz.`,
  },
  frequency: {
    what: (frequencyHz, sampleRateHz, lowestHz, highestHz) =>
      `Częstotliwości ${frequencyHz} Hz nie da się usłyszeć przy częstotliwości próbkowania tego dźwięku ${sampleRateHz} Hz, tylko od ${lowestHz} do ${highestHz} Hz.`,
    advice: (usualRates) =>
      `Nagrywaj z częstotliwością ${usualRates} Hz (mikrofon słuchawek często daje mniej) albo wybierz inną częstotliwość. Długości i tak możesz wpisać.`,
  },
};
