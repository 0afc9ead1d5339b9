import type { Filling, GasId } from '../../air/gases.ts';

export const gasNames = {
  'dry-air': 'dry air',
  helium: 'helium',
  argon: 'argon',
  nitrogen: 'nitrogen',
  oxygen: 'oxygen',
  'carbon-dioxide': 'carbon dioxide',
  'sulfur-hexafluoride': 'sulfur hexafluoride',
} satisfies Readonly<Record<GasId, string>>;

/** What a tube may be filled with. */
export const fillingNames = { ...gasNames, air: 'air' } satisfies Readonly<Record<Filling, string>>;
