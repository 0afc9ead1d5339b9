import type { LaterWords } from '../../catalogue.ts';
import { ordinal } from '../grammar.ts';

export const questions: LaterWords['questions'] = {
  outlier: (cm, apartMm) =>
    `La marca a ${cm}\u00a0cm está a ${apartMm}\u00a0mm de las demás. ¿Qué puede haber pasado y cómo lo averiguarías?`,
  outlierHidden: (cm) =>
    `La marca a ${cm}\u00a0cm está apartada de las demás. ¿Qué puede haber pasado y cómo lo averiguarías?`,
  largestPart: (source) =>
    `La mayor parte de la incertidumbre viene de esto: ${source}. ¿Qué cambiarías para reducirla a la mitad?`,
  largestPartHidden:
    '¿De dónde viene la mayor parte de la incertidumbre? ¿Qué cambiarías para reducirla a la mitad?',
  sources: {
    reading: 'la lectura de las longitudes',
    fork: 'la frecuencia del diapasón',
    loudest: 'la posición más sonora, que está al lado de la resonancia',
    zero: 'el cero de la regla',
    scale: 'la escala de la regla',
    end: 'la corrección de extremo',
    wall: 'la pared del tubo, que frena la onda',
  },
  endMeasured: (endMm, diameterMm) =>
    `Tu corrección de extremo es de ${endMm}\u00a0mm en un tubo de ${diameterMm}\u00a0mm. ¿Cuánto sería en un tubo el doble de ancho y cómo lo comprobarías?`,
  endMeasuredHidden:
    'La columna se comporta como si fuera más larga. ¿Cómo lo muestran tus longitudes? ¿Cómo cambia la velocidad si no lo tienes en cuenta?',
  oneOrder: (forkHz) =>
    `Todas las marcas son de una sola resonancia. ¿Qué te puede decir una segunda resonancia del diapasón de ${forkHz}\u00a0Hz que esta no dice?`,
  noTemperature: (speedMps) =>
    `No se anotó la temperatura. ¿Qué temperatura debería tener el aire para que la velocidad fuera de ${speedMps}\u00a0m/s? ¿Es probable en tu aula?`,
  noTemperatureHidden:
    'No se anotó la temperatura. ¿A qué temperatura del aire correspondería tu velocidad? ¿Es probable en tu aula?',
  apartFromTheory: (differenceMps) =>
    `La velocidad medida menos la prevista es de ${differenceMps}\u00a0m/s, más de lo que explican las incertidumbres. ¿Qué error daría, por sí solo, justo esa diferencia?`,
  apartFromTheoryHidden:
    'Compara tu velocidad con la prevista. ¿Qué error daría, por sí solo, justo esa diferencia?',
  nearTheory: (differenceMps) =>
    `La velocidad medida menos la prevista es de ${differenceMps}\u00a0m/s, dentro de las incertidumbres. ¿Demuestra eso la teoría? ¿Cuál es la diferencia más pequeña que podrías haber encontrado?`,
  nearTheoryHidden:
    'Compara tu velocidad con la prevista. ¿Cuál es la diferencia más pequeña que podrías haber encontrado?',
  twoPlaces: (oneMps, otherMps) =>
    `Has encontrado ${oneMps} y ${otherMps}\u00a0m/s en dos lugares. ¿Qué errores son iguales en los dos y qué supone eso para su diferencia?`,
  twoPlacesHidden:
    'Has medido en dos lugares. ¿Qué errores son iguales en los dos y qué supone eso para la diferencia de las velocidades?',
  nextResonance: (order, forkHz) =>
    `¿A qué longitud buscarías la ${ordinal(order)} resonancia del diapasón de ${forkHz}\u00a0Hz? Di también con cuánta seguridad.`,
};
