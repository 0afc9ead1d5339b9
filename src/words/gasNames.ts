import type { GasId } from '../solver/otherGas.ts';

export const GAS_NAMES: Readonly<Record<GasId, string>> = {
  'dry-air': 'dry air',
  helium: 'helium',
  argon: 'argon',
  nitrogen: 'nitrogen',
  oxygen: 'oxygen',
  'carbon-dioxide': 'carbon dioxide',
  'sulfur-hexafluoride': 'sulfur hexafluoride',
};
