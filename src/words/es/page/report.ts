import type { LaterWords } from '../../catalogue.ts';

export const reportPage: LaterWords['reportPage'] = {
  name: 'Informe',
  print: 'Imprimir o guardar como PDF',
  save: 'Guardar como archivo HTML',
  leaveWorking: 'Sin los cálculos, con espacio para calcular',
  back: 'Volver a Archivo',
  lines: 'Hay líneas vacías para los nombres y la discusión.',
  pending: 'El informe:',
};
