import type { LaterWords } from '../../catalogue.ts';
import { fixed } from '../../numbers.ts';

export const working: LaterWords['working'] = {
  heading: 'Cálculos',
  empty: 'Cada paso aparece aquí con sus números en cuanto una marca tiene su longitud.',
  lead: 'Cada paso, para que puedas repetirlo a mano.',
  letters: {
    L: 'longitud leída en la regla, menos el desfase del cero',
    n: 'orden de la resonancia',
    f: 'frecuencia del diapasón',
    λ: 'longitud de onda',
    e: 'corrección de extremo',
    ℓ: 'longitud de la columna de aire, con la corrección de extremo',
    v: 'velocidad del sonido en el tubo',
    w: 'parte de la velocidad que quitan las paredes',
    c: 'velocidad del sonido en el aire, fuera del tubo',
    'χ²': 'suma de los cuadrados de las desviaciones, cada una dividida por su incertidumbre',
    a: 'fracción de la semianchura que la posición puede apartarse de la resonancia',
    b: 'semianchura de la resonancia',
    q: 'subida respecto al diapasón solo, como cociente de amplitudes',
    u: 'incertidumbre típica',
    U: 'incertidumbre expandida, k·u',
    t: 'temperatura del aire',
    h: 'humedad relativa',
    p: 'presión del aire',
    γ: 'cociente de los dos calores específicos del gas',
    R: 'constante de los gases',
    T: 'temperatura absoluta',
    M: 'masa molar del gas',
    Δ: 'diferencia de las dos velocidades',
  },
};

export const budget: LaterWords['budget'] = {
  region: 'Balance de incertidumbre',
  heading: 'De dónde viene la incertidumbre',
  table: 'Líneas del balance',
};

export const fit: LaterWords['fit'] = {
  heading: 'Ajuste',
  lead: 'La pendiente es la velocidad en el tubo; la recta empieza por debajo de cero: a la distancia de la corrección de extremo, o al doble si la columna es abierta.',
};

export const nextMarks: LaterWords['nextMarks'] = {
  heading: 'Qué medir ahora',
  lead: 'Las marcas que más reducirían la incertidumbre, con los diapasones que tienes.',
  none: 'Pon primero una marca en una resonancia, con su longitud.',
};

export const circle: LaterWords['circle'] = {
  heading: 'Por qué la posición más sonora no es la resonancia',
  lead: 'El micrófono oye dos sonidos de la misma frecuencia: el del diapasón y el de la columna. La fase del de la columna gira cuando la longitud pasa por la resonancia, así que la suma recorre un círculo. La resonancia está en el punto opuesto al del diapasón; la posición más sonora es el punto más alejado de cero.',
  mark: 'Resonancia de',
  own: (name) => `Este es el círculo tal como se oyó: ${name}.`,
  example:
    'Un ejemplo, aún no el tuyo: el sonido de la columna es 1,5 veces el del diapasón y va adelantado 60°. Desliza más allá de una resonancia mientras esta página escucha: su marca trae tu propio círculo.',
  tooLong: {
    inHalfWidths: (halfWidths, louderDb) =>
      `La posición más sonora está a ${fixed(halfWidths, 2)} semianchuras de la resonancia y suena ${louderDb}\u00a0dB más fuerte: una columna leída ahí es demasiado larga.`,
    inMillimetres: (halfWidths, mm, louderDb) =>
      `La posición más sonora está a ${fixed(halfWidths, 2)} semianchuras (${mm}\u00a0mm) de la resonancia y suena ${louderDb}\u00a0dB más fuerte: una columna leída ahí es demasiado larga.`,
  },
  tooShort: {
    inHalfWidths: (halfWidths, louderDb) =>
      `La posición más sonora está a ${fixed(halfWidths, 2)} semianchuras de la resonancia y suena ${louderDb}\u00a0dB más fuerte: una columna leída ahí es demasiado corta.`,
    inMillimetres: (halfWidths, mm, louderDb) =>
      `La posición más sonora está a ${fixed(halfWidths, 2)} semianchuras (${mm}\u00a0mm) de la resonancia y suena ${louderDb}\u00a0dB más fuerte: una columna leída ahí es demasiado corta.`,
  },
  alike: 'Aquí la posición más sonora y la resonancia son la misma: los dos sonidos van en fase.',
  nowhere: 'Aquí el sonido de la columna solo debilita el del diapasón: ninguna posición es la más sonora.',
  noMillimetres: 'También en milímetros, cuando se conocen el diámetro del tubo y el orden de la resonancia.',
  stays:
    'Mientras el diapasón, la mano y el micrófono sigan igual, este error va hacia el mismo lado en cada resonancia: repetir no lo compensa. Para evitarlo, lee la regla cuando esta página muestre «Aquí».',
};
