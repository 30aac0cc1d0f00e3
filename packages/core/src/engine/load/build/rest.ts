import type { Engine } from '../../model.js';
import { given } from '../given.js';
import type { SheetReader } from '../reader.js';
import type { Sheet } from '../schema.js';

export function buildFluids(sheet: Sheet, reader: SheetReader): Engine['fluids'] {
  return (sheet.fluids ?? []).map((raw, index) => ({
    name: raw.name,
    ...given('amount', reader.stated('volume', raw.amount, ['fluids', index, 'amount'])),
    ...given('grade', raw.grade),
    from: reader.from(raw.from, ['fluids', index, 'from']),
  }));
}

export function buildSources(sheet: Sheet): Engine['sources'] {
  return Object.fromEntries(
    Object.entries(sheet.sources ?? {}).map(([key, raw]) => [
      key,
      { title: raw.title, ...given('locator', raw.locator), standing: raw.standing },
    ]),
  );
}
