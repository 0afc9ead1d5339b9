import type { LaterWords } from '../catalogue.ts';
import { counted, plural } from './grammar.ts';

export const classResult: LaterWords['classResult'] = {
  none: 'Ningún grupo tiene todavía un resultado.',
  counted: (groups, all) =>
    `${plural(groups, 'Cuenta', 'Cuentan')} ${groups} de ${counted(all, 'grupo', 'grupos')}.`,
  others: 'Los demás están en la tabla, con el motivo.',
  interval:
    'En 95 de cada 100 clases así, la velocidad verdadera está dentro del ±, si los grupos no comparten ningún error.',
  spread: (mps) =>
    `Los resultados de los grupos difieren más de lo que explican sus propias incertidumbres: otros ${mps}\u00a0m/s (desviación típica). Un grupo solo no puede ver esos errores.`,
  noSpread: 'Los grupos no difieren más de lo que explican sus propias incertidumbres.',
  noAir: 'Ningún grupo anotó una temperatura: las velocidades se usan tal como están.',
  referred: (celsius) =>
    `Todas las velocidades se pasan a ${celsius}\u00a0°C con la fórmula de la velocidad del sonido en el aire.`,
  withoutAir: (groups) =>
    plural(
      groups,
      `${groups} grupo no anotó la temperatura: su velocidad se usa tal como está.`,
      `${groups} grupos no anotaron la temperatura: sus velocidades se usan tal como están.`,
    ),
  theory: (mps, difference) =>
    `La velocidad prevista para este aire es de ${mps}\u00a0m/s. Diferencia de la clase con ella: ${difference}\u00a0m/s.`,
  shared:
    'Los errores comunes a todos los grupos, como los de unas reglas del mismo modelo, no se compensan al promediar y no están en esta incertidumbre.',
  method: 'Método: media con efectos aleatorios (Paule & Mandel 1982); intervalo según Hartung & Knapp 2001.',
};

export const classGroup: LaterWords['classGroup'] = {
  row: (number) => `Fila ${number}`,
  mark: (number) => `Marca ${number}`,
  markCause: (mark, cause) => `${mark}: ${cause}`,
  noResult: 'Sin resultado.',
  outlier: (difference) => `Valor atípico, no cuenta: a ${difference}\u00a0m/s del resultado de la clase.`,
  noReason: 'No llegó con marcas que puedan mostrar por qué.',
  held: 'No cuenta hasta que lo hayas comprobado. Activa su casilla para que cuente tal como está.',
  longColumn: (metres) =>
    `Una columna de ${metres}\u00a0m es más larga que los tubos escolares. ¿Se escribieron milímetros en lugar de centímetros?`,
  resultAlone: 'Un resultado sin marcas.',
  noAir: 'Sin temperatura anotada: la velocidad se usa tal como está.',
  unnamed: (table, row) => `${table}, fila ${row}`,
};

export const sameGroup: LaterWords['sameGroup'] = {
  'same marks': (group) => `Las mismas marcas que «${group}».`,
  'earlier state of the same experiment': (group) => `Una versión anterior de «${group}».`,
  'same group again': (group) => `El mismo grupo que «${group}».`,
};

export const classDiscussion: LaterWords['classDiscussion'] = {
  spread:
    'Los resultados de los grupos difieren más de lo que permiten sus incertidumbres. ¿En qué no pensó nadie?',
  agree:
    'Los grupos concuerdan dentro de sus incertidumbres. ¿En qué pueden haberse equivocado todos a la vez?',
  apart: (groups) =>
    `Estos resultados se apartan de los demás: ${groups}. Todos pueden aprender de ellos: ¿qué habría en el montaje para que saliera justo esa diferencia?`,
  others: (count) => counted(count, 'más', 'más'),
  temperatures: (coldest, warmest) =>
    `El aire estaba entre ${coldest} y ${warmest}\u00a0°C. En el gráfico de velocidad y temperatura, ¿cuántos m/s por grado salen, y son las incertidumbres de los grupos lo bastante pequeñas para verlo?`,
  moreGroups: '¿Cómo cambiarían la media y su incertidumbre si hubiera medido el doble de grupos?',
};

export const spreadPicture: LaterWords['spreadPicture'] = {
  title: 'Dispersión de la clase',
  heading: 'Velocidad del sonido, grupo por grupo',
  axis: 'velocidad del sonido, m/s (barras: 95\u00a0%)',
  shows: (groups, mps, uncertainty) =>
    `${counted(groups, 'grupo', 'grupos')}, del más lento al más rápido, con intervalos del 95\u00a0%. La banda es el resultado de la clase, ${mps} ± ${uncertainty}\u00a0m/s. Los puntos huecos no cuentan.`,
  outliers: (count) =>
    plural(count, 'La cruz es un valor atípico.', `Las ${count} cruces son valores atípicos.`),
  beyond: 'Lo que queda fuera del borde se dibuja en el borde.',
};
