import type { FirstWords } from '../../catalogue.ts';

export const groupName: FirstWords['groupName'] = {
  ask: 'Nome do seu grupo',
  take: 'Usar',
  later: 'Depois',
  taken: (group) =>
    `Seus arquivos, o relatório e a turma agora chamam vocês de “${group}”. O nome pode ser mudado em Arquivo.`,
};
