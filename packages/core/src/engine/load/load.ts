import { done, type Outcome, refused } from '../../quantity/outcome.js';
import type { Engine } from '../model.js';
import { buildFigures } from './build/figures.js';
import { buildHeads, withBoltOpenings } from './build/heads.js';
import { buildJoints } from './build/joints.js';
import { buildLayout } from './build/layout.js';
import { buildLimits } from './build/limits.js';
import { buildCam, buildCrankTrain, buildValveGear } from './build/machine.js';
import { buildInspection, buildMachining } from './build/measuring.js';
import { buildFluids, buildSources } from './build/rest.js';
import { buildRunIn, buildRunning } from './build/running.js';
import { buildStock } from './build/stock.js';
import { crossCheck } from './checks/cross-check.js';
import { readDocument, type SheetDocument } from './document.js';
import type { SheetFault } from './fault.js';
import { given } from './given.js';
import { faultsOfIssues } from './issues.js';
import { SheetReader } from './reader.js';
import { type Sheet, sheetSchema } from './schema.js';

/**
 * Reads a sheet (YAML text) into an engine. Every figure keeps its printed text and its origin; cross-checks add
 * cautions and keep what was printed.
 *
 * Returns every fault that was found, each with its line, when the text is not a sheet or contradicts itself in a way
 * that no engine can have. Text of more than a million characters is refused before it is parsed. Never throws.
 */
export function loadSheet(text: string): Outcome<Engine, readonly SheetFault[]> {
  const document = readDocument(text);
  if (!document.ok) return document;
  const shape = sheetSchema.safeParse(document.value.data);
  if (!shape.success) return refused(inTextOrder(faultsOfIssues(shape.error.issues, document.value)));
  return build(shape.data, document.value);
}

function build(sheet: Sheet, document: SheetDocument): Outcome<Engine, readonly SheetFault[]> {
  const sources = buildSources(sheet);
  const reader = new SheetReader(document, sources, sheet.defaultFrom);
  const layout = buildLayout(sheet, reader);
  const heads = buildHeads(sheet, layout, reader);
  const joints = buildJoints(sheet, heads, reader);
  const limits = buildLimits(sheet, reader);
  const engine: Engine = {
    format: 1,
    name: sheet.name,
    invented: sheet.invented ?? false,
    description: sheet.description ?? '',
    sources,
    ...given('fuel', sheet.fuel),
    layout,
    crankTrain: buildCrankTrain(sheet, reader),
    ...given('cam', buildCam(sheet, reader)),
    ...given('valveGear', buildValveGear(sheet, reader)),
    heads: withBoltOpenings(heads, joints),
    joints,
    limits: limits.map((each) => each.limit),
    ...given('inspection', buildInspection(sheet, reader)),
    ...given('stock', buildStock(sheet, reader)),
    ...given('machining', buildMachining(sheet, reader)),
    ...given('figures', buildFigures(sheet, layout, reader)),
    fluids: buildFluids(sheet, reader),
    runIn: buildRunIn(sheet, reader),
    ...given('running', buildRunning(sheet, reader)),
    gaps: sheet.gaps ?? [],
    cautions: [],
  };
  if (reader.faults.length === 0) crossCheck(engine, sheet, limits, reader);
  if (reader.faults.length > 0) return refused(inTextOrder(reader.faults));
  return done({ ...engine, cautions: inTextOrder(reader.cautions) });
}

function inTextOrder<T extends { readonly line?: number; readonly column?: number }>(each: readonly T[]): readonly T[] {
  return [...each].sort((a, b) => (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0));
}
