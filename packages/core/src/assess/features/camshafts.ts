import type { Engine } from '../../engine/index.js';
import type { Camshaft } from './anatomy.js';
import { slug } from './stations.js';

interface Camshafts {
  readonly camshafts: readonly Camshaft[];
  readonly assumed?: string;
}

/**
 * Camshafts with so many journals each: as many as the sheet says; else one in the block, overhead one for each bank, two where buckets
 * stand over both rows of valves.
 */
export function camshaftsOf(engine: Engine, journals: number): Camshafts {
  const kind = engine.valveGear?.kind;
  const stated = engine.inspection?.camshafts;
  const inBlock = kind === undefined || kind === 'pushrod';
  if (inBlock) return { camshafts: numbered(stated ?? 1, journals) };
  if (stated !== undefined) return { camshafts: overhead(engine, stated, journals) };
  const buckets = kind === 'overhead-bucket';
  const each = buckets ? 'two camshafts a bank, over buckets' : 'one camshaft a bank';
  return {
    camshafts: overhead(engine, (buckets ? 2 : 1) * engine.layout.banks.length, journals),
    assumed: `${each}: the sheet does not say how many`,
  };
}

/** Named by bank and row of valves where their number tells these. */
function overhead({ layout: { banks } }: Engine, count: number, journals: number): readonly Camshaft[] {
  if (count !== banks.length && count !== 2 * banks.length) return numbered(count, journals);
  const rows = count === banks.length ? [''] : ['intake ', 'exhaust '];
  return banks
    .map(({ id }) => (banks.length > 1 ? `${id} ` : ''))
    .flatMap((bank) =>
      rows.map((row) => ({ id: slug(`${bank}${row}camshaft`), name: `${bank}${row}camshaft`, journals })),
    );
}

const numbered = (count: number, journals: number): readonly Camshaft[] =>
  count === 1
    ? [{ id: 'camshaft', name: 'camshaft', journals }]
    : Array.from({ length: count }, (_, at) => ({ id: `camshaft-${at + 1}`, name: `camshaft ${at + 1}`, journals }));
