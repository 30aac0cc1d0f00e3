import type { CylinderNumber, Engine } from '../../engine/model.js';
import { formatQuantity } from '../../quantity/index.js';

/** Cylinders bank by bank from the front: the order in which neighbours stand side by side. */
export function byBank({
  layout,
}: Engine): readonly (readonly { readonly number: CylinderNumber; readonly bank: string }[])[] {
  const banks =
    layout.banks.length > 0 ? layout.banks.map(({ id }) => id) : [...new Set(layout.cylinders.map((c) => c.bank))];
  return banks
    .map((bank) => layout.cylinders.filter((one) => one.bank === bank).sort((a, b) => a.place - b.place))
    .filter((bank) => bank.length > 0);
}

/** "25 %", "12.5 %" */
export const percentOf = (share: number): string => formatQuantity('ratio', share, '%', 1).replace(/\.0(?= ?%)/, '');
