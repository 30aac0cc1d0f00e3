import { it } from 'vitest';
import { parseQuantity } from '/work/main/packages/core/src/quantity/index.js';
it('x', () => { for (const t of ['11.5e-6','11.5e-6 ±1e-6','0.0000115 ±0.0000012','-0.56','10000000.2', '.29', '1000000000000.4']) console.log(t, JSON.stringify(parseQuantity('ratio', t))); });
