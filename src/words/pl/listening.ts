import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

/** "1 raz", "2 razy", "5 razy". */
const times = (count: number): string => counted(count, 'raz', 'razy', 'razy');

export const listening: FirstWords['listening'] = {
  between: (fromS, toS, said) => `Między ${fromS} a ${toS}\u00a0s: ${said}`,
  slower: 'Przesuwaj wolniej: o szerokość dłoni w cztery sekundy.',
  noFork: (toleranceHz, nominalHz) =>
    `Nie było słychać stałego tonu o częstotliwości ${nominalHz} ± ${toleranceHz}\u00a0Hz: sprawdź częstotliwość wybitą na kamertonie, uderz mocniej albo trzymaj kamerton bliżej mikrofonu.`,
  otherFork: (toleranceHz, nominalHz, otherHz) =>
    `Nie było słychać stałego tonu o częstotliwości ${nominalHz} ± ${toleranceHz}\u00a0Hz, ale był ton około ${otherHz}\u00a0Hz: sprawdź częstotliwość wybitą na kamertonie i wybraną na tej stronie. Jeśli to właściwy kamerton, jest daleko od wybitej wartości: obciążony, wyszczerbiony albo luźny.`,
  offStamp: (measuredHz, offsetHz, isAbove) =>
    `Kamerton brzmi z częstotliwością ${measuredHz}\u00a0Hz, ${offsetHz}\u00a0Hz ${isAbove ? 'powyżej' : 'poniżej'} wybitej wartości: użyj częstotliwości zmierzonej i sprawdź, czy kamerton nie jest wyszczerbiony.`,
  beating: (beatHz, isAbove) =>
    `Brzmi inny kamerton o prawie tej samej częstotliwości, ${beatHz}\u00a0Hz ${isAbove ? 'powyżej' : 'poniżej'} twojego: powstają dudnienia o częstotliwości ${beatHz}\u00a0Hz. Poproś, żeby go wytłumić, albo poczekaj, aż ucichnie.`,
  forkTurned: (turns, fromS) =>
    `Od ${fromS}\u00a0s ton zanikł i wrócił odwrócony ${times(turns)}, jak przy obracaniu kamertonu wokół trzonka: trzymaj jedno ramię stale zwrócone do wylotu.`,
  tooFast: (halfPowerS, slower) =>
    `Rezonanse minęły w ${halfPowerS}\u00a0s, za szybko: słup nie zdążył osiągnąć pełnej głośności. ${slower}`,
  tooFastAt: (timeS, slower) =>
    `W ${timeS}\u00a0s rezonans minął za szybko: słup nie zdążył osiągnąć pełnej głośności i może brakować znacznika. ${slower}`,
  clipping: (count) =>
    `Sygnał wejściowy był za głośny ${times(count)}: odsuń mikrofon albo zmniejsz jego wzmocnienie.`,
  overdriven: (percent, count) =>
    `Dźwięk został obcięty ${times(count)} na ${percent}\u00a0% pełnej skali, zanim doszedł do nagrywania: odsuń mikrofon albo zmniejsz jego wzmocnienie.`,
  tooFaint: (percent) =>
    `Najgłośniejsza chwila sięga tylko ${percent}\u00a0% pełnej skali: zwiększ wzmocnienie mikrofonu albo przysuń go do wylotu słupa.`,
  gainPumping:
    'W sali robi się ciszej, gdy kamerton jest głośny: automatyczne wzmocnienie zmienia głośność i poziomów nie można porównać. Wyłącz automatyczne wzmocnienie, tłumienie szumu i usuwanie echa mikrofonu.',
  tooShort:
    'Nagranie trwa mniej niż sekundę: za krótko, żeby znaleźć w nim kamerton. Nagraj całe przesunięcie.',
  silent: 'Nie dochodzi żaden dźwięk: mikrofon jest wyciszony albo wybrano niewłaściwy.',
  gap: (losses, timeS) =>
    `Dźwięk zgubiono ${times(losses)}, pierwszy raz w ${timeS}\u00a0s: tam nie ma znaczników. Zamknij inne programy i przesuń tam jeszcze raz.`,
  dropouts: (count) =>
    `Dźwięk urwał się i wrócił ${times(count)}: poziomy są tam za niskie. Zamknij inne programy albo użyj mikrofonu z kablem.`,
  dropoutsFrom: (count, timeS) =>
    `Dźwięk urwał się i wrócił ${times(count)}, pierwszy raz w ${timeS}\u00a0s: poziomy są tam za niskie. Zamknij inne programy albo użyj mikrofonu z kablem.`,
  narrowBand: (edgeKhz) =>
    `Powyżej ${edgeKhz}\u00a0kHz nie ma nic: to typowe dla mowy daleko od mikrofonu, słuchawek w trybie rozmowy albo nagrania z telefonu. Częstotliwość kamertonu jest niższa i ją słychać. Jeśli poziomy wyglądają dziwnie, zrób test wzmocnienia albo wybierz mikrofon samego urządzenia.`,
  highBandMissing: (edgeKhz) =>
    `Powyżej ${edgeKhz}\u00a0kHz nie ma nic: to typowe dla cichej sali, tłumienia szumu albo mocno skompresowanego pliku. Częstotliwość kamertonu jest niższa i ją słychać. Jeśli poziomy wyglądają dziwnie, zrób test wzmocnienia; nagrywaj jako WAV, jeśli możesz.`,
  floorFell: (fallDb) =>
    `Cisza między dźwiękami spadła o ${fallDb}\u00a0dB poniżej początkowego hałasu w sali: albo w sali ucichło, albo włączyło się tłumienie szumu. Przy mikrofonie zrób test wzmocnienia, zanim zaufasz poziomowi.`,
  offset: (percent) =>
    `Dźwięk ma składową stałą ${percent}\u00a0% pełnej skali: to wada karty dźwiękowej albo jej wtyczki. Poziomy przy częstotliwości kamertonu są mimo to dobre; jeśli dźwięk jest obcinany, spróbuj innego wejścia.`,
  hum: (mainsHz, levelDb) =>
    `Przydźwięk sieci ${mainsHz}\u00a0Hz jest głośny (${levelDb}\u00a0dB): odłącz ładowarkę albo odsuń się od zasilaczy i lamp.`,
  cutOff: 'Brakuje końca tego pliku: został ucięty. To, co jest, zostało użyte.',
};

export const unheardFrequency: FirstWords['unheardFrequency'] = {
  sampleRate: {
    what: (sampleRateHz, lowestHz, highestHz) =>
      `Ten dźwięk ma częstotliwość próbkowania ${sampleRateHz}\u00a0Hz; ta strona może użyć od ${lowestHz} do ${highestHz}\u00a0Hz.`,
    advice: (usualRates) => `Nagrywaj z częstotliwością ${usualRates}\u00a0Hz.`,
  },
  frequency: {
    what: (frequencyHz, sampleRateHz, lowestHz, highestHz) =>
      `Częstotliwości ${frequencyHz}\u00a0Hz nie da się usłyszeć przy częstotliwości próbkowania tego dźwięku ${sampleRateHz}\u00a0Hz, tylko od ${lowestHz} do ${highestHz}\u00a0Hz.`,
    advice: (usualRates) =>
      `Nagrywaj z częstotliwością ${usualRates}\u00a0Hz (mikrofon słuchawek często daje mniej) albo wybierz inną częstotliwość. Długości i tak możesz wpisać.`,
  },
};
