import { z } from 'zod';
import { figures } from './schema-figures.js';
import { cam, crankTrain, head, layout, valveGear } from './schema-machine.js';
import { inspection, machining, stock } from './schema-measuring.js';
import { fuel, runInStep, running } from './schema-running.js';
import { from, words } from './schema-values.js';
import { fluid, joint, limit, rows } from './schema-work.js';

const source = z.strictObject({
  title: words,
  locator: words.optional(),
  standing: z.enum(['manual', 'part-maker', 'measured', 'rule-of-thumb', 'memory', 'invented', 'unstated']),
});

/** Shape of a sheet. What the texts mean, and whether they agree with each other, is read and checked after it. */
export const sheetSchema = z
  .strictObject({
    gudgeon: z.literal(1).meta({ description: 'Version of the sheet format.' }),
    name: words,
    invented: z.boolean().meta({ description: 'True for an engine that does not exist.' }).optional(),
    description: words.optional(),
    defaultFrom: from.meta({ description: 'Origin of every figure that has no `from` of its own.' }).optional(),
    sources: z.record(z.string().min(1).max(60), source).optional(),
    fuel: fuel.optional(),
    layout,
    crankTrain: crankTrain.optional(),
    cam: cam.optional(),
    valveGear: valveGear.optional(),
    heads: z.array(head).max(8).optional(),
    joints: z.array(joint).max(60).optional(),
    limits: rows(limit).optional(),
    inspection: inspection.optional(),
    stock: stock.optional(),
    machining: machining.optional(),
    figures: figures.optional(),
    fluids: rows(fluid).optional(),
    runIn: rows(runInStep).optional(),
    running: running.optional(),
    gaps: rows(words)
      .meta({ description: 'Figures that the maker did not print or that could not be read.' })
      .optional(),
  })
  .meta({ title: 'Engine sheet', description: 'An engine and the figures it is assembled to; see docs/sheet.md.' });

export type Sheet = z.output<typeof sheetSchema>;
export type RawJoint = NonNullable<Sheet['joints']>[number];

/** JSON Schema (draft 2020-12) of the sheet as it is written: for editors, and for docs/schema/sheet.schema.json. */
export function sheetJsonSchema(): Record<string, unknown> {
  return z.toJSONSchema(sheetSchema, { io: 'input' }) as Record<string, unknown>;
}
