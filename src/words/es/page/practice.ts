import type { FirstWords } from '../../catalogue.ts';

export const practice: FirstWords['practice'] = {
  heading: 'Columna de práctica',
  strike: 'Golpear el diapasón',
  forkAtMouth: 'Diapasón en la boca',
  damp: 'Apagarlo',
  shorter: 'Un milímetro más corta',
  longer: 'Un milímetro más larga',
  shorterFine: 'Un quinto de milímetro más corta',
  longerFine: 'Un quinto de milímetro más larga',
  rule: 'Lupa: la regla en el pistón',
  room: 'Sala',
  rooms: { quiet: 'en silencio', talk: 'algunas voces', 'full class': 'clase llena' },
  instruments: (celsius, humidityPercent, diameterMm) =>
    `Instrumentos: ${celsius}\u00a0°C, humedad ${humidityPercent}\u00a0%, tubo de ${diameterMm}\u00a0mm de diámetro interior`,
  instrumentsApart: (celsius, humidityPercent, diameterMm, place) =>
    `Instrumentos: ${celsius}\u00a0°C, humedad ${humidityPercent}\u00a0%, tubo de ${diameterMm}\u00a0mm de diámetro interior. El lugar actual es otra sala, así que se anotan en un lugar propio: «${place}»`,
  note: 'Anotar estas lecturas',
  noted: 'Las lecturas están anotadas en Montaje.',
  notedApart: (place) =>
    `Las lecturas están anotadas en Montaje, en un lugar propio: «${place}». Lo que midas ahora pertenece a ese lugar.`,
  otherTube: (diameterMm, practiceDiameterMm) =>
    `El tubo de práctica tiene ${practiceDiameterMm}\u00a0mm de diámetro, pero el de este experimento, ${diameterMm}\u00a0mm. Para practicar, empieza un experimento nuevo en Archivo.`,
};

export const guide: FirstWords['guide'] = {
  heading: 'Guía',
  count: (done, all) => `Guía, ${done} de ${all}:`,
  says: {
    listen: 'Pulsa Escuchar y espera un momento.',
    strike: 'Golpea el diapasón y mantenlo en la boca del tubo.',
    slide: 'Arrastra el tirador despacio hasta el final: cada destello es una marca.',
    slideAgain: 'Faltan resonancias: golpea otra vez y pasa por ellas más despacio.',
    back: 'Vuelve como indica la imagen, hasta que diga «Aquí».',
    type: 'Lee la longitud en la lupa y escríbela encima del tubo.',
    rest: 'Vuelve igual a la marca siguiente; lee y escribe su longitud.',
    read: 'Pulsa «Anotar estas lecturas», junto al diapasón.',
    faintSliding: 'El diapasón suena débil: golpéalo otra vez y sigue deslizando.',
    faint: 'El diapasón suena débil: golpéalo otra vez. La vuelta se conserva.',
  },
  done: 'Listo: la velocidad está arriba. Más marcas la hacen más segura.',
  showTruth: 'Mostrar los valores verdaderos',
  hideTruth: 'Ocultar los valores verdaderos',
};
