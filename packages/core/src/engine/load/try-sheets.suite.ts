import { readdirSync, readFileSync } from 'node:fs';
import { expect } from 'vitest';
import type { Engine } from '../model.js';
import { type BuiltLimit, buildLimits } from './build/limits.js';
import { buildSources } from './build/rest.js';
import { readDocument } from './document.js';
import { loadSheet, type SheetFault } from './index.js';
import { SheetReader } from './reader.js';
import { sheetSchema } from './schema.js';

/** What the tests of the loader share: sheets of the project, and small sheets to spoil. */
export const ROOT = new URL('../../../../../', import.meta.url);
export const read = (path: string) => readFileSync(new URL(path, ROOT), 'utf8');
export const sheetsIn = (folder: string) =>
  readdirSync(new URL(folder, ROOT))
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => `${folder}${name}`);

export function engineOf(text: string): Engine {
  const loaded = loadSheet(text);
  expect(loaded.ok ? [] : loaded.fault).toEqual([]);
  return (loaded as { value: Engine }).value;
}
export function faultsOf(text: string): readonly SheetFault[] {
  const loaded = loadSheet(text);
  return loaded.ok ? [] : loaded.fault;
}

export const BASE = `gudgeon: 1
name: Four
layout:
  form: inline
  cylinders: [1, 2, 3, 4]
  firingOrder: 1-3-4-2
`;

export const JOINT = `${BASE}joints:
  - id: head
    fasteners: [{ id: bolt, name: head bolt, thread: M10 }]
    holes: [{ ids: 1-4, fastener: bolt }]
    order: 1-4
    stages:
      - { torque: 20 N·m }
      - { holes: 1-4, angle: 90 deg }
`;

/** The limit rows of a sheet as its checks read them. */
export function limitsOf(text: string): readonly BuiltLimit[] {
  const document = readDocument(text);
  if (!document.ok) throw new Error('the sheet cannot be read');
  const sheet = sheetSchema.parse(document.value.data);
  return buildLimits(sheet, new SheetReader(document.value, buildSources(sheet), sheet.defaultFrom));
}
