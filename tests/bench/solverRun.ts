import { parseArgs } from 'node:util';
import { benchBlunders, benchLocated, benchSolver } from './solver.ts';
import { USUAL_MAKING } from './solverExperiments.ts';
import { printWorlds } from './worlds/printWorlds.ts';

/*
 * npm run bench:solver -- [--tables N] [--blundered N] [--seed N]   tables by an independent forward model
 * npm run bench:solver -- --own-model   experiments drawn by the solver's own model
 * npm run bench:solver -- --located     the same, lengths read beside the resonance
 */

function print(title: string, value: string, goal = ''): void {
  process.stdout.write(`${title.padEnd(58)}${value.padStart(14)}  ${goal}\n`);
}

function printLocated(): void {
  process.stdout.write('1000 experiments a row, seed 19: closed or open, 25-44 mm, 4-8 marks, 0.7 mm\n');
  for (const at of ['loudest', 'centre'] as const) {
    for (const rises of ['falling', 'any'] as const) {
      for (const isRiseKnown of at === 'loudest' ? [true, false] : [true]) {
        for (const forks of [1, 2] as const) {
          const result = benchLocated(1000, 19, { at, rises, isRiseKnown, forks, readingM: 0.0007 });
          const stated = at === 'centre' ? '' : isRiseKnown ? ', rise stated' : ', rise unknown';
          print(
            `${at}, rises ${rises}${stated}, forks ${forks}`,
            `${result.coveragePct.toFixed(1)} %`,
            `taken for exact ${result.coverageWithoutPct.toFixed(1)} %; ± ${result.meanIntervalMps.toFixed(2)} m/s, ${result.intervalRatio.toFixed(2)} × exact; ${result.ordersWrong} of ${result.marks} orders wrong, ${result.falseOutliersPct.toFixed(2)} % blamed`,
          );
        }
      }
    }
  }
}

function printOwnModel(): void {
  const result = benchSolver(4000, 20_260);
  const blunders = benchBlunders(2000, 7);
  const exact = benchSolver(1000, 11, { ...USUAL_MAKING, forkUncertainty: 0 });
  const rough = benchSolver(1000, 12, { ...USUAL_MAKING, forkUncertainty: 0.0029 });
  print(
    'experiments (marks)',
    `${result.experiments} (${result.marks})`,
    'seed 20260; 2-8 marks, 0.7 mm, forks 0.1 %',
  );
  print('orders right', `${result.ordersRightPct.toFixed(3)} %`, 'goal >= 99.5 %');
  print('  mean confidence where wrong', result.wrongConfidence?.toFixed(3) ?? 'none wrong');
  print('  wrong with a confidence above 0.9', String(result.confidentlyWrong));
  print(
    'bias',
    `${result.biasPct.toFixed(4)} %`,
    `± ${result.biasStandardErrorPct.toFixed(4)} %; goal <= 0.02 %`,
  );
  print('spread of the speed', `${result.spreadPct.toFixed(3)} %`);
  print('95 % intervals that cover the truth', `${result.coveragePct.toFixed(1)} %`, 'goal 93-97 %');
  print(
    '  the same with exact forks',
    `${exact.coveragePct.toFixed(1)} %`,
    `spread ${exact.spreadPct.toFixed(3)} %`,
  );
  print(
    '  the same with forks good to 0.29 %',
    `${rough.coveragePct.toFixed(1)} %`,
    `spread ${rough.spreadPct.toFixed(3)} %`,
  );
  print('good marks blamed', `${result.falseOutliersPct.toFixed(2)} %`);
  print(
    '1 cm blunder among 5-8 marks found',
    `${blunders.foundPct.toFixed(1)} %`,
    `of ${blunders.experiments}, seed 7; goal >= 98 %`,
  );
  print('  found and no other mark blamed', `${blunders.foundAlonePct.toFixed(1)} %`);
  print('  found, or said to be inconsistent', `${blunders.noticedPct.toFixed(1)} %`);
  print('  intervals that cover the truth all the same', `${blunders.coveragePct.toFixed(1)} %`);
  for (const [title, rival] of [
    ['textbook: difference of two lengths, orders given', result.differenceMethod],
    ['textbook: first resonance, e = 0.3 d', result.firstResonance],
  ] as const) {
    print(
      title,
      `${rival.biasPct.toFixed(3)} %`,
      `bias; rms error ${rival.errorPct.toFixed(3)} %, the solver's ${rival.solverErrorPct.toFixed(3)} % in the same ${rival.experiments}`,
    );
  }
}

const { values } = parseArgs({
  options: {
    tables: { type: 'string', default: '400' },
    blundered: { type: 'string', default: '100' },
    seed: { type: 'string', default: '31' },
    'own-model': { type: 'boolean', default: false },
    located: { type: 'boolean', default: false },
  },
});
if (values.located) printLocated();
else if (values['own-model']) printOwnModel();
else printWorlds(Number(values.tables), Number(values.blundered), Number(values.seed));
