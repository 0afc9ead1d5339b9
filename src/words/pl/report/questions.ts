import type { LaterWords } from '../../catalogue.ts';
import { ordinal } from '../grammar.ts';

export const questions: LaterWords['questions'] = {
  outlier: (cm, apartMm) =>
    `Znacznik przy ${cm}\u00a0cm odbiega od pozostałych o ${apartMm}\u00a0mm. Co mogło się stać i jak to sprawdzisz?`,
  outlierHidden: (cm) =>
    `Znacznik przy ${cm}\u00a0cm odbiega od pozostałych. Co mogło się stać i jak to sprawdzisz?`,
  largestPart: (source) =>
    `Największe źródło niepewności: ${source}. Co zmienisz, żeby zmniejszyć tę część o połowę?`,
  largestPartHidden: 'Skąd pochodzi największa część niepewności? Co zmienisz, żeby zmniejszyć ją o połowę?',
  sources: {
    reading: 'odczyt długości',
    fork: 'częstotliwość kamertonu',
    loudest: 'najgłośniejsze miejsce, które leży obok rezonansu',
    zero: 'zero linijki',
    scale: 'podziałka linijki',
    end: 'poprawka na końcu rury',
    wall: 'ścianka rury, która spowalnia falę',
  },
  endMeasured: (endMm, diameterMm) =>
    `Twoja poprawka na końcu rury to ${endMm}\u00a0mm przy średnicy ${diameterMm}\u00a0mm. Ile wyniosłaby w rurze dwa razy szerszej i jak to sprawdzisz?`,
  endMeasuredHidden:
    'Słup zachowuje się tak, jakby był dłuższy. Jak widać to w twoich długościach? Jak zmieni się prędkość, jeśli tego nie uwzględnisz?',
  oneOrder: (forkHz) =>
    `Wszystkie znaczniki należą do jednego rezonansu. Co powie ci drugi rezonans kamertonu ${forkHz}\u00a0Hz, czego ten nie powie?`,
  noTemperature: (speedMps) =>
    `Nie zanotowano temperatury. Przy jakiej temperaturze powietrza prędkość wyniosłaby ${speedMps}\u00a0m/s? Czy to możliwe w waszej sali?`,
  noTemperatureHidden:
    'Nie zanotowano temperatury. Jaka temperatura powietrza odpowiada twojej prędkości? Czy to możliwe w waszej sali?',
  apartFromTheory: (differenceMps) =>
    `Prędkość zmierzona minus przewidywana to ${differenceMps}\u00a0m/s, więcej niż tłumaczą niepewności. Jaki jeden błąd dałby dokładnie taką różnicę?`,
  apartFromTheoryHidden:
    'Porównaj swoją prędkość z przewidywaną. Jaki jeden błąd dałby dokładnie taką różnicę?',
  nearTheory: (differenceMps) =>
    `Prędkość zmierzona minus przewidywana to ${differenceMps}\u00a0m/s, w granicach niepewności. Czy to dowodzi teorii? Jak małą różnicę można by w ogóle wykryć?`,
  nearTheoryHidden: 'Porównaj swoją prędkość z przewidywaną. Jak małą różnicę można by w ogóle wykryć?',
  twoPlaces: (oneMps, otherMps) =>
    `W dwóch miejscach wyszło ${oneMps} i ${otherMps}\u00a0m/s. Jakie błędy są w obu takie same i co to znaczy dla różnicy?`,
  twoPlacesHidden:
    'Pomiary są z dwóch miejsc. Jakie błędy są w obu takie same i co to znaczy dla różnicy prędkości?',
  nextResonance: (order, forkHz) =>
    `Przy jakiej długości będziesz szukać rezonansu ${ordinal(order)} rzędu dla kamertonu ${forkHz}\u00a0Hz? Podaj też niepewność tej długości.`,
};
