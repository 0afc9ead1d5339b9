import type { LaterWords } from '../catalogue.ts';
import { fullCentimetres, fullMillimetres, megabytes } from '../numbers.ts';

export const pastedName: LaterWords['pastedName'] = 'Wklejony tekst';

export const otherFile: LaterWords['otherFile'] = {
  archive:
    'To plik arkusza kalkulacyjnego albo archiwum ZIP; ta strona go nie otwiera. Zapisz go w jego programie jako CSV i otwórz ten CSV.',
  oldDocument: 'To stary arkusz albo stary dokument. Zapisz go w jego programie jako CSV i otwórz ten CSV.',
  compressed: 'Ten plik jest skompresowany. Najpierw go rozpakuj.',
  pdf: 'To PDF. Nie da się z niego odczytać liczb: otwórz tabelę, z której powstał.',
  picture: 'To obraz. Nie da się z niego odczytać liczb.',
};

export const intakeFault: LaterWords['intakeFault'] = {
  empty: 'Plik jest pusty.',
  largeExperiment: (bytes, mostBytes) =>
    `Plik ma ${megabytes(bytes)}; doświadczenie ma najwyżej ${megabytes(mostBytes)}.`,
  largeTable: (bytes, mostBytes) =>
    `Plik ma ${megabytes(bytes)}; tabela znaczników ma najwyżej ${megabytes(mostBytes)}.`,
  unreadable: 'Nie da się odczytać pliku. Jeśli został przeniesiony lub zmieniony, wybierz go jeszcze raz.',
  longPaste: (millions) =>
    `Liczba znaków w tekście to ${millions} mln: żadna tabela znaczników nie jest tak długa.`,
  nested: 'Plik jest zagnieżdżony dużo głębiej niż doświadczenie: to coś innego.',
  noJson: (said) => `Plik nie jest pełnym JSON-em (${said}). Zapisz go jeszcze raz na tej stronie.`,
  classResult: 'To wynik całej klasy: nie ma w nim znaczników. Otwórz pliki grup albo plik CSV klasy.',
  noResults: 'Tabela ma nagłówek, ale żadnych wyników.',
  noUncertainty:
    'potrzebna jest kolumna standard_uncertainty_mps lub expanded_uncertainty_mps (95\u00a0%): bez niej wynikom nie da się nadać wag.',
  noSpeed: (lowestMps, highestMps, typed) =>
    `powinno być od ${lowestMps} do ${highestMps}\u00a0m/s, nie ${typed}. Sprawdź liczbę i jednostkę.`,
  recordFull: (mostBytes) =>
    `z tym wierszem plik doświadczenia miałby więcej niż ${megabytes(mostBytes)}. Zacznij nowe dla reszty albo skróć notatki.`,
  listFull: (most) =>
    `doświadczenie mieści znaczniki, kamertony i miejsca, każdych najwyżej ${most}. Zacznij nowe dla reszty.`,
  badOrder: (order, { lowest, highest }) =>
    `rząd musi być od ${lowest} do ${highest}, nie ${order}. Zostaw puste, jeśli nie wiesz.`,
  otherTube: (diameterM, ownDiameterM) =>
    `ta rura ma średnicę ${fullMillimetres(diameterM)}\u00a0mm, rura doświadczenia ${fullMillimetres(ownDiameterM)}\u00a0mm. Inna rura to inne doświadczenie.`,
  otherMouth: (mouth, ownMouth) =>
    `ten wylot to ${mouth}, wylot doświadczenia to ${ownMouth}. Inna rura to inne doświadczenie.`,
  noReading: (zeroOffsetM, columnM, { lowest, highest }) =>
    `przy przesunięciu zera linijki ${fullCentimetres(zeroOffsetM)}\u00a0cm słup długości ${fullCentimetres(columnM)}\u00a0cm dałby odczyt ${fullCentimetres(columnM + zeroOffsetM)}\u00a0cm; odczyty są od ${fullCentimetres(lowest)}\u00a0cm do ${fullCentimetres(highest)}\u00a0cm. Otwórz tabelę jako nowe doświadczenie albo najpierw zmień przesunięcie zera w widoku Układ.`,
};

export const intakeRemark: LaterWords['intakeRemark'] = {
  notRead: (headings) => `Te kolumny nie są odczytywane: ${headings}.`,
  skipped: (rows) => `Te wiersze są pominięte (excluded) i nie da się ich odczytać: ${rows}.`,
  mendFile: 'Popraw te pola w pliku albo zapisz go jeszcze raz z tej strony; potem otwórz go ponownie.',
  goodPart: 'W części bez błędów nie ma tego, co tu wymieniono; odrzucone liczby są w jej notatce.',
  widestTaken: (widestM) =>
    `Długości mają różne niepewności (zwykłą, gdy żadnej nie podano): dla wszystkich przyjmuje się największą, ${fullMillimetres(widestM)}\u00a0mm.`,
  offsetPutBack: (zeroOffsetM) =>
    `Długości z tabeli są traktowane jako długości słupa: przesunięcie zera linijki ${fullMillimetres(zeroOffsetM)}\u00a0mm jest dodawane z powrotem.`,
};
