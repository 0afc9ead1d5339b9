import type { Filling, GasId } from '../air/gases.ts';

export const GAS_NAMES: Readonly<Record<GasId, string>> = {
  'dry-air': 'dry air',
  helium: 'helium',
  argon: 'argon',
  nitrogen: 'nitrogen',
  oxygen: 'oxygen',
  'carbon-dioxide': 'carbon dioxide',
  'sulfur-hexafluoride': 'sulfur hexafluoride',
};

/** What a tube may be filled with. */
export const FILLING_NAMES: Readonly<Record<Filling, string>> = { ...GAS_NAMES, air: 'air' };
