import { z } from 'zod';
import { quantity } from './schema-values.js';

const one = quantity('A figure with its unit, or one of the words that it can have.', '101.2 mm');

/** Figures of the combination of parts by key; which keys there are stands in `engine/figures`. */
export const figures = z.record(z.string().min(1).max(60), one).meta({
  description:
    'Figures that no other section holds, by key: gasket-bore, valve-angle@intake, chamber-area@3. docs/sheet.md lists them.',
  examples: [{ 'gasket-bore': '101.2 mm', 'valve-angle@intake': '23 deg' }],
});
